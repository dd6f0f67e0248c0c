using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Clients;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What the shop has on file about the client, and the doors to change it.</summary>
public sealed class DetailsModel(ClientOnFileStore clients, OwnPageDetailsStore store, ForgetStore forget, ShopClock clock) : OwnPageModel(clients)
{
    public const int LongestWords = 400;

    public sealed record Fields
    {
        public string? FormKey { get; init; }

        /// <summary>About who should pay.</summary>
        public string? Words { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    private OwnPageDetailsStore.Row? _saved;

    public OwnPageDetailsStore.Row Saved => _saved ??= store.Get(Me.Id);

    public IReadOnlyList<OwnPageDetailsStore.Player> Players => store.Players(Me.Id);

    public void OnGet()
    {
    }

    /// <summary>A payer may pay for many, so it is the owner who changes it.</summary>
    public IActionResult OnPostPayer()
    {
        Limit("Input.Words", Input.Words, LongestWords);
        if (Input.Words is null)
            ModelState.AddModelError("Input.Words", Say.Details.PayerMissing);
        return ModelState.IsValid
            ? After(store.AskAboutPayer(Myself, Input.Words!, Input.FormKey ?? ""), _ => GoOn("/my/details", Say.Details.PayerSent))
            : Page();
    }

    /// <summary>Changes one's mind about being forgotten.</summary>
    public IActionResult OnPostKeep() => After(forget.Undo(Myself, Me.Id), _ => GoOn("/my/details", Say.Details.ForgetUndone));

    public string DayOf(DateTimeOffset instant) => Spoken.Language.Day(clock.DayOf(instant));

    public string Second => string.Join(", ", new[] { Saved.SecondName, Saved.SecondPhone is { } phone ? Phones.Shown(phone) : "", Saved.SecondMail ?? "" }.Where(s => s.Length > 0));

    public string RemindersNow => Saved switch
    {
        { Reminders: false } => Say.Details.RemindNever,
        { RemindBy: RemindBy.Sms } => Say.Details.RemindSms,
        _ => Say.Details.RemindMail,
    };

    public IEnumerable<string> QuietNames => QuietMonths.Of(Saved.QuietMonths).Select(m => Spoken.Language.Culture.DateTimeFormat.GetMonthName(m));
}
