using Dapper;
using TagPage.Core.Forecast;
using TagPage.Records.DueDates;
using TagPage.Records.Shop;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>The cast plays twice a week 1.5 h, so polyester of 1.25 mm is past its date after about six weeks.</summary>
public sealed class DueStoreTests : IDisposable
{
    private readonly Street _street = new(empty: true);

    public DueStoreTests() => new DueDateKeeper(_street.Database, _street.Time).Attach();

    private DueStore Store => new(_street.Database, new ShopStore(_street.Database), _street.Clock);

    private DueList Due => Store.List(withUnseen: false);

    private (long Client, long Player, long Racket) Strung(string client, DateOnly on)
    {
        var id = _street.Records.Client(client);
        var player = _street.Records.Player(id, client);
        var racket = _street.Records.Racket(player);
        _street.Records.Job(racket, strungOn: on);
        return (id, player, racket);
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Past_comes_before_due_soon_and_good_is_left_out()
    {
        Strung("Soon", Street.Today.AddDays(-30));
        Strung("Long past", Street.Today.AddDays(-120));
        Strung("Good", Street.Today.AddDays(-3));
        Strung("Past", Street.Today.AddDays(-60));

        var list = Due;

        Assert.Equal(["Long past", "Past", "Soon"], list.Households.Select(h => h.Client.Client));
        Assert.Equal([RestringState.Past, RestringState.Past, RestringState.DueSoon], list.Households.Select(h => h.Rackets[0].By.State));
    }

    [Fact]
    public void All_rackets_of_a_client_stand_together_the_most_urgent_first()
    {
        var family = Strung("Odalys", Street.Today.AddDays(-60));
        var second = _street.Records.Racket(_street.Records.Player(family.Client, "Pim", junior: true));
        _street.Records.Job(second, strungOn: Street.Today.AddDays(-90));

        var household = Assert.Single(Due.Households);

        Assert.Equal([second, family.Racket], household.Rackets.Select(r => r.Racket.RacketId));
    }

    [Fact]
    public void What_is_kept_of_a_household_is_what_the_list_works_out()
    {
        var family = Strung("Odalys", Street.Today.AddDays(-60));
        var pim = _street.Records.Player(family.Client, "Pim", junior: true);
        _street.Records.Job(_street.Records.Racket(pim), strungOn: Street.Today.AddDays(-90));
        var away = _street.Records.Racket(pim, number: 2);
        _street.Records.Job(away, strungOn: Street.Today.AddDays(-90));
        _street.Records.Change($"UPDATE racket SET not_before = '{Street.Today.AddDays(1):yyyy-MM-dd}' WHERE id = {away}");
        _street.Records.Job(_street.Records.Racket(pim, number: 3), strungOn: Street.Today.AddDays(-3));
        Strung("Ewan", Street.Today.AddDays(-60));
        Strung("Good", Street.Today.AddDays(-3));

        var kept = Store.Kept(Store.Clients(10));

        Assert.Equal(2, kept.Count);
        Assert.All(Due.Households, household => Assert.Equal(
            household.Rackets.Select(r => (r.Racket.Player, r.Racket.Number, r.By.Due!.Value)),
            kept[household.Client.ClientId].Select(r => (r.Player, r.Number, r.DueOn))));
    }

    [Fact]
    public void Client_unseen_for_a_year_is_left_out_and_counted()
    {
        Strung("Long gone", Street.Today.AddMonths(-12).AddDays(-1));
        Strung("Just within", Street.Today.AddMonths(-12));

        Assert.Equal(["Just within"], Due.Households.Select(h => h.Client.Client));
        Assert.Equal(1, Due.Unseen);
        Assert.Equal(2, Store.List(withUnseen: true).Households.Count);
    }

    [Fact]
    public void Client_seen_with_another_racket_is_not_unseen()
    {
        var (_, player, _) = Strung("Loyal", Street.Today.AddMonths(-15));
        _street.Records.Job(_street.Records.Racket(player, number: 2), strungOn: Street.Today.AddDays(-3));

        Assert.Equal(0, Due.Unseen);
        Assert.Single(Due.Households);
    }

    [Theory]
    [InlineData("UPDATE racket SET state = 'Resting'")]
    [InlineData("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'")]
    [InlineData("UPDATE racket SET own_date = '2027-06-01'")]
    public void Racket_at_rest_without_strings_or_with_a_later_date_of_the_owners_is_not_due(string change)
    {
        Strung("Past", Street.Today.AddDays(-60));
        _street.Database.Write(c => c.Execute(change));

        Assert.Empty(Due.Households);
    }

    [Fact]
    public void Pages_by_key_hold_every_household_once_and_in_order()
    {
        var random = new Random(20261126);
        for (var n = 0; n < 23; n++)
        {
            var (_, player, _) = Strung($"Client {n}", Street.Today.AddDays(-random.Next(60, 160)));
            for (var number = 2; number <= 1 + (n % 3); number++)
                _street.Records.Job(_street.Records.Racket(player, number: number), strungOn: Street.Today.AddDays(-random.Next(60, 160)));
        }
        var store = Store;
        var whole = store.List(withUnseen: false, most: 1000);
        Assert.InRange(whole.Households.Count, 15, 23);

        var paged = new List<long>();
        DueKey? after = null;
        do
        {
            var page = store.List(withUnseen: false, after, most: 4);
            Assert.Equal((whole.Clients, whole.Rackets), (page.Clients, page.Rackets));
            paged.AddRange(page.Households.Select(h => h.Client.ClientId));
            after = page.Next;
        } while (after is not null);

        Assert.Equal(whole.Households.Select(h => h.Client.ClientId), paged);
        Assert.Equal(whole.Households.Sum(h => h.Rackets.Count), whole.Rackets);
        Assert.Equal(paged.Count, whole.Clients);
    }

    [Fact]
    public void Racket_that_lies_at_the_bench_is_not_due()
    {
        var (_, _, racket) = Strung("Past", Street.Today.AddDays(-60));
        _street.Records.Job(racket);

        Assert.Empty(Due.Households);
    }
}
