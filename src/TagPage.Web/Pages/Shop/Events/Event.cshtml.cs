using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Import;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>An event as the owner sets it up: who strings, which tablets help, and its end.</summary>
public sealed class EventModel(EventStore events, DeskStore desks, TechnicianStore technicians, EventSessionStore sessions, PublicAddress address, EventHomeStore homes, ShopStore shops) : RecordPage<DeskBoard>
{
    [BindProperty]
    public TechnicianInput Input { get; set; } = new();

    public int Tablets => sessions.Count(Id);

    /// <summary>Null once the event is closed.</summary>
    public string? Link => Saved.Event.IsOpen ? address.Of($"/desk/enter/{sessions.Token(Saved.Event)}") : null;

    public string? Warning => address.IsHttps ? null : $"{address.Base} is not https. Tablets open the desk over https only; set an https address under Settings → Web address first.";

    private string Here => $"/shop/events/{Id}";

    protected override DeskBoard? Find(long id) => desks.Get(User.AtShop(), id);

    public void OnGet() => Input = TechnicianInput.New(Saved.Event);

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(technicians.Add(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn(Here, $"{Input.Name} strings at this event."))
        : Page();

    /// <summary>Ticket of desk number 1 if the shop at home has given out none meanwhile.</summary>
    public long FirstTicket => Saved.Entries.Count > 0 ? Saved.Entries[0].Ticket : 1;

    /// <summary>The files that bring a closed event into the shop's own records.</summary>
    public IActionResult OnGetHome(int ticket) => !Saved.Event.IsOpen && ModelState.IsValid && ticket is >= 1 and <= ImportLimits.MostTicket - DeskNumbers
        ? File(ExportZip.Of(EventFiles.Of(Saved.Event, homes.Get(User.AtShop(), Id) ?? [], ticket, shops.Get())), "application/zip", $"event-{Id}-home.zip")
        : NotFound();

    private const int DeskNumbers = 100_000;

    public IActionResult OnPostSignOut() => Without(events.SignHelpersOut(User.AtShop(), Id), "All tablets are signed out. The square is a new one.");

    public IActionResult OnPostClose() => Without(events.Close(User.AtShop(), Id), "The event is closed.");

    public IActionResult OnPostReopen() => Without(events.Reopen(User.AtShop(), Id), "The event is open again.");

    /// <summary>Presses that send no technician, whose fields are then not asked for.</summary>
    private IActionResult Without(Outcome outcome, string sentence)
    {
        ModelState.Clear();
        Input = TechnicianInput.New(Saved.Event);
        return this.After(outcome, _ => this.GoOn(Here, sentence));
    }
}
