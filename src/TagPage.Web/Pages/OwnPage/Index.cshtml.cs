using TagPage.Core.Forecast;
using TagPage.Labels.Papers;
using TagPage.Records.Money;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Papers;

namespace TagPage.Web.Pages.OwnPage;

public sealed class IndexModel(ClientOnFileStore clients, OwnPageRacketStore rackets, OwedStore owed, PrepaidStore prepaid, PriceListStore prices, ShopStore shops, ShopClock clock) : OwnPageModel(clients)
{
    public sealed record Player(long Id, string Name, IReadOnlyList<(OwnPageRacket Racket, RestringBy By)> Rackets);

    public IReadOnlyList<Player> Players { get; private set; } = [];

    public ShopDetails Shop => shops.Get();

    public string DayOf(DateTimeOffset instant) => Spoken.Language.Day(clock.DayOf(instant));

    /// <summary>Restrings paid in advance; null for a client who never had any.</summary>
    public int? PrepaidLeft => prepaid.LeftOfClient(Myself);

    public OwedStore.Mine? Owed { get; private set; }

    /// <summary>Pays it by phone; null where nothing can.</summary>
    public TransferQr? Square { get; private set; }

    /// <summary>Who is paid, where there is a square.</summary>
    public BillSender Payee => field ??= Payment.Payee(Shop, prices.Get());

    public void OnGet()
    {
        Owed = owed.OfClient(Who.Client(Me.Id));
        Square = Owed is { } mine ? Payment.Square(Payee, Shop.Currency, mine.OwedMinor, mine.Tickets, Payment.ReferenceOf(mine.Tickets)) : null;
        var (today, values, all) = (clock.Today, Shop.StartingValues, rackets.OfClient(Me.Id));
        var names = GivenNames.Of(all.Select(r => r.Player));
        Players = [.. all.GroupBy(r => r.PlayerId).Select(p => new Player(p.Key, names[p.First().Player], [.. p.Select(r => (r, r.Work(today, values)))]))];
    }
}
