using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Jobs;
using TagPage.Records.Backups;
using TagPage.Records.DueDates;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Troubles;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Bench;

public sealed class IndexModel(BenchStore bench, FrameStore frames, DueStore due, ClientRequestStore requests, BackupStore backups, TroubleStore troubles, ShopStore shops, ShopClock clock) : PageModel
{
    private const int MostHouseholds = 8, MostRequests = 8;

    public ShopDetails Shop => shops.Get();

    public DateOnly Today { get; private set; }

    public BenchStore.Beginning Begun { get; private set; } = new();

    public IReadOnlyList<JobRow> Open { get; private set; } = [];

    public IReadOnlyList<JobRow> Ready { get; private set; } = [];

    public IReadOnlyList<JobRow> CameIn { get; private set; } = [];

    public DueList Due { get; private set; } = DueList.Empty;

    public ClientRequestStore.Part Requests { get; private set; } = new([], 0, null);

    /// <summary>Announced, and still to be brought: nobody can string them yet.</summary>
    public int Expected => Open.Count(j => j.Expected);

    public int AtHand => Open.Count - Expected;

    public int Late => Open.Count(j => !j.Expected && j.PromisedFor < Today);

    public int OnMachine => Open.Count(j => j.State == JobState.OnMachine);

    public IReadOnlyList<Trouble> Troubles { get; private set; } = [];

    public string? LastBackup { get; private set; }

    public void OnGet()
    {
        Today = clock.Today;
        Begun = bench.Begun();
        Open = bench.Open();
        Ready = bench.Ready();
        ViewData["ReadyOf"] = Ready.CountBy(job => job.ClientId).Where(of => of.Value > 1).ToDictionary();
        CameIn = bench.CameIn(Today);
        Due = due.List(withUnseen: false, most: MostHouseholds);
        ViewData["Frames"] = frames.Catalogue();
        Requests = requests.Open(most: MostRequests);
        var state = backups.State();
        Troubles = troubles.All(state);
        LastBackup = state.LastGood is { } last ? BackupWords.At(clock.OnTheWall(last)) : null;
    }
}
