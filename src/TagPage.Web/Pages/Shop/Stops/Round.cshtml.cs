using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Deeds;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Stops;

/// <summary>What to bring and fetch on the way round, stop by stop.</summary>
public sealed class RoundModel(RoundStore store, JobStore jobs, ShopClock clock) : PageModel
{
    /// <summary>Nobody wants to take back with one press what they did yesterday.</summary>
    private static readonly TimeSpan Undoable = TimeSpan.FromHours(8);

    /// <summary>The jobs that were pressed.</summary>
    [BindProperty(Name = "job", SupportsGet = true)]
    public List<long> Pressed { get; set; } = [];

    public DateOnly Today => clock.Today;

    public IReadOnlyList<RoundStore.Part> Parts => store.Parts(User.AtShop());

    /// <summary>Null where the status line offers it already.</summary>
    public RoundStore.Last? LastMove { get; private set; }

    public void OnGet() => LastMove = TempData.HasUndo() ? null : store.LastMove(User.AtShop(), clock.Now - Undoable);

    public IActionResult OnPostBring() => After(store.Bring(User.AtShop(), Pressed), JobDeed.Brought, job => $"brought to {job.CollectAt}");

    public IActionResult OnPostFetch() => After(store.Fetch(User.AtShop(), Pressed), JobDeed.Fetched, job => $"fetched from {job.LeftAt}");

    /// <summary>Takes back what the query names.</summary>
    public IActionResult OnPostUndo(JobDeed deed)
    {
        var me = User.AtShop();
        return this.After(deed == JobDeed.Brought ? store.Unbring(me, Pressed) : store.Unfetch(me, Pressed),
            _ => this.GoOn("/shop/round", $"{Capital(Said)} {(deed == JobDeed.Brought ? "to be brought" : "to be fetched")} again."));
    }

    public static string Undo(JobDeed deed, IEnumerable<long> jobs) =>
        $"/shop/round?handler=Undo&deed={deed}&{string.Join('&', jobs.Select(id => string.Create(CultureInfo.InvariantCulture, $"job={id}")))}";

    public static string Tickets(IEnumerable<long> tickets) => tickets.ToList() is [var one] ? $"ticket {one}" : $"tickets {string.Join(", ", tickets)}";

    private string Said => $"{Tickets(Pressed.Distinct().Select(id => jobs.GetWithVisits(User.AtShop(), id)!.Ticket))} {(Pressed.Distinct().Count() == 1 ? "is" : "are")}";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private IActionResult After(Outcome outcome, JobDeed deed, Func<JobRow, string> what) => this.After(outcome, first =>
    {
        this.CanBeUndone(Undo(deed, Pressed.Distinct()));
        return this.GoOn("/shop/round", $"{Capital(Said)} {what(jobs.GetWithVisits(User.AtShop(), first)!)}.");
    });
}
