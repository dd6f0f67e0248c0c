using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Players;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Hours that were played with a racket: of today with one press, of other days with a form.</summary>
public sealed class HoursModel(ClientOnFileStore clients, OwnPageRacketStore rackets, HoursStore store, ShopClock clock) : OwnPageModel(clients)
{
    private const string IsoDay = "yyyy-MM-dd";

    public OwnPageRacket Racket { get; private set; } = new();

    private DateOnly Today => clock.Today;

    /// <summary>As typed.</summary>
    [BindProperty]
    public string? From { get; set; }

    [BindProperty]
    public string? To { get; set; }

    [BindProperty]
    public string? Hours { get; set; }

    private static string Iso(DateOnly day) => day.ToString(IsoDay, CultureInfo.InvariantCulture);

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        (From, To) = (Iso(Today), Iso(Today));
        return Page();
    }

    public IActionResult OnPost(long id, string? formKey)
    {
        if (!Load(id))
            return NotFound();
        if (Read(formKey) is not { } entry || store.Add(Myself, id, entry) is Outcome.Refused)
        {
            ModelState.AddModelError(nameof(Hours), Say.Play.HoursUnread.Fill(("most", $"{LoggedHours.MostADay}")));
            return Page();
        }
        this.Say(Say.Play.HoursSaved);
        return Redirect(Link($"/my/rackets/{id}"));
    }

    private bool Load(long id)
    {
        if (store.Of(Myself, id) is null || rackets.Get(Me.Id, id) is not { } racket)
            return false;
        Racket = racket;
        return true;
    }

    /// <summary>A press says the hours alone: they are today's.</summary>
    private HoursEntry? Read(string? formKey) =>
        decimal.TryParse(Hours?.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hours)
        && Day(From, Today) is { } from && Day(To, from) is { } to
            ? new HoursEntry { FormKey = formKey ?? "", PlayedOn = from, LastDay = to, Hours = hours }
            : null;

    private static DateOnly? Day(string? typed, DateOnly otherwise) =>
        string.IsNullOrWhiteSpace(typed) ? otherwise
        : DateOnly.TryParseExact(typed, IsoDay, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day
        : null;
}
