using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Jobs;
using TagPage.Records.Backups;
using TagPage.Records.DueDates;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.Loans;
using TagPage.Records.Machines;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Stops;
using TagPage.Records.Troubles;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Bench;

public sealed class IndexModel(BenchStore bench, BackStore backs, JobMinutesStore minutes, FrameStore frames, DueStore due, ClientRequestStore requests, BackupStore backups, TroubleStore troubles, MachineStore machines, StopStore stops, LoanStore loans, ShopStore shops, ShopClock clock) : PageModel
{
    private const int MostHouseholds = 8, MostRequests = 8;

    /// <summary>Nobody wants to take back with one press what they did yesterday.</summary>
    private static readonly TimeSpan Undoable = TimeSpan.FromHours(8);

    public ShopDetails Shop => shops.Get();

    public DateOnly Today { get; private set; }

    public BenchStore.Beginning Begun { get; private set; } = new();

    public IReadOnlyList<JobRow> Open { get; private set; } = [];

    public IReadOnlyList<JobRow> Ready { get; private set; } = [];

    public (int Count, IReadOnlyList<JobRow> Newest) CameIn { get; private set; } = (0, []);

    public DueList Due { get; private set; } = DueList.Empty;

    public ClientRequestStore.Part Requests { get; private set; } = new([], 0, null);

    /// <summary>Announced, and still to be brought: nobody can string them yet.</summary>
    public int Expected => Open.Count(j => j.Expected);

    public int AtHand => Open.Count - Expected;

    public int Late => Open.Count(j => !j.Expected && j.PromisedFor < Today);

    public int OnMachine => Open.Count(j => j.State == JobState.OnMachine);

    /// <summary>What of today’s promises fits into today; null where nothing is promised or nobody said when the shop is open.</summary>
    public DayLoad? Load { get; private set; }

    /// <summary>When the shop closes today, in minutes since midnight.</summary>
    public int? ClosesAt { get; private set; }

    /// <summary>The move that can be taken back here; null where the status line offers it already.</summary>
    public BackStore.Last? LastMove { get; private set; }

    /// <summary>Rackets of the shop’s own that should have come back.</summary>
    public IEnumerable<LoanRow> Loans => loans.Overdue(User.AtShop());

    public bool HasStops => stops.InUse().Count > 0;

    public IReadOnlyList<Trouble> Troubles { get; private set; } = [];

    public string? LastBackup { get; private set; }

    /// <summary>Machines whose check is overdue.</summary>
    public IReadOnlyList<MachineRow> Overdue => machines.Overdue();

    public void OnGet()
    {
        Today = clock.Today;
        Begun = bench.Begun();
        Open = bench.Open();
        Ready = bench.Ready();
        Weigh();
        LastMove = TempData.HasUndo() ? null : backs.LastMove(User.AtShop(), clock.Now - Undoable);
        ViewData["ReadyOf"] = Ready.CountBy(job => job.ClientId).Where(of => of.Value > 1).ToDictionary();
        CameIn = bench.CameIn(Today);
        Due = due.List(withUnseen: false, most: MostHouseholds);
        ViewData["Frames"] = frames.Catalogue();
        Requests = requests.Open(most: MostRequests);
        var state = backups.State();
        Troubles = troubles.All(state);
        LastBackup = state.LastGood is { } last ? BackupWords.At(clock.OnTheWall(last)) : null;
    }

    private bool IsPromised(JobRow job) => job.PromisedFor <= Today;

    /// <summary>Lays what is promised by today, and what is on the machine, against the opening hours, in the list’s order.</summary>
    private void Weigh()
    {
        var work = Open.Where(job => !job.Expected && (IsPromised(job) || job.State == JobState.OnMachine)).ToList();
        if (work.Count == 0 && !Shop.BenchTimer)
            return;
        var learned = minutes.Learned();
        if (Shop.BenchTimer)
            ViewData["Minutes"] = learned;
        if (!work.Any(IsPromised) || Shop.Opening.MinutesLeft(clock.Minute) is not { } left)
            return;
        Load = DayLoad.Of([.. work.Select(job => (learned.Left(job, clock.Now), IsPromised(job)))], left);
        ClosesAt = Shop.Opening.ClosesAt(Today);
        ViewData["Misses"] = work.Where(IsPromised).Skip(Load.Fit).Select(job => job.Id).ToHashSet();
    }
}
