using TagPage.Records.Clients;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What the shop has on file about the client, with links to change it.</summary>
public sealed class DetailsModel(ClientOnFileStore clients, OwnPageDetailsStore store, ShopClock clock) : OwnPageModel(clients)
{
    public OwnPageDetailsStore.Row Saved { get; private set; } = new();

    public IReadOnlyList<OwnPageDetailsStore.Player> Players { get; private set; } = [];

    public void OnGet() => (Saved, Players) = (store.Get(Me.Id), store.Players(Me.Id));

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
