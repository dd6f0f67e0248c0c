using TagPage.Core.Forecast;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.OwnPage;

public sealed class IndexModel(ClientOnFileStore clients, OwnPageRacketStore rackets, ShopStore shops, ShopClock clock) : OwnPageModel(clients)
{
    public sealed record Player(long Id, string Name, IReadOnlyList<(OwnPageRacket Racket, RestringBy By)> Rackets);

    public IReadOnlyList<Player> Players { get; private set; } = [];

    public ShopDetails Shop => shops.Get();

    public string DayOf(DateTimeOffset instant) => Spoken.Language.Day(clock.DayOf(instant));

    public void OnGet()
    {
        var (today, values, mine) = (clock.Today, Shop.StartingValues, rackets.OfClient(Me.Id));
        var names = GivenNames.Of(mine.Select(r => r.Player));
        Players = [.. mine.GroupBy(r => r.PlayerId).Select(p => new Player(p.Key, names[p.First().Player], [.. p.Select(r => (r, r.Work(today, values)))]))];
    }
}
