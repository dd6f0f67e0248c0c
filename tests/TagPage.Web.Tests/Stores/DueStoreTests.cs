using Dapper;
using TagPage.Core.Forecast;
using TagPage.Records.DueDates;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Stores;

/// <summary>The cast plays twice a week 1.5 h, so polyester of 1.25 mm is past its date after about six weeks.</summary>
public sealed class DueStoreTests : IDisposable
{
    private readonly TestShop _shop = new();

    private DueList Due => _shop.Get<DueStore>().List(withUnseen: false);

    private (long Client, long Player, long Racket) Strung(string client, DateOnly on)
    {
        var id = _shop.Records.Client(client);
        var player = _shop.Records.Player(id, client);
        var racket = _shop.Records.Racket(player);
        _shop.Records.Job(racket, strungOn: on);
        return (id, player, racket);
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Past_comes_before_due_soon_and_good_is_left_out()
    {
        Strung("Soon", TestShop.Today.AddDays(-30));
        Strung("Long past", TestShop.Today.AddDays(-120));
        Strung("Good", TestShop.Today.AddDays(-3));
        Strung("Past", TestShop.Today.AddDays(-60));

        var list = Due;

        Assert.Equal(["Long past", "Past", "Soon"], list.Households.Select(h => h.Client.Client));
        Assert.Equal([RestringState.Past, RestringState.Past, RestringState.DueSoon], list.Households.Select(h => h.Rackets[0].By.State));
    }

    [Fact]
    public void All_rackets_of_a_client_stand_together_the_most_urgent_first()
    {
        var family = Strung("Odalys", TestShop.Today.AddDays(-60));
        var second = _shop.Records.Racket(_shop.Records.Player(family.Client, "Pim", junior: true));
        _shop.Records.Job(second, strungOn: TestShop.Today.AddDays(-90));

        var household = Assert.Single(Due.Households);

        Assert.Equal([second, family.Racket], household.Rackets.Select(r => r.Racket.RacketId));
    }

    [Fact]
    public void The_reasons_come_along_limit_by_limit()
    {
        Strung("Past", TestShop.Today.AddDays(-60));

        var by = Due.Households[0].Rackets[0].By;

        Assert.Equal(LimitKind.Hours, by.DecidedBy);
        Assert.Contains(by.Limits, l => l is { Kind: LimitKind.Hours, Counts: true } && Languages.English.Why(l).Contains("3 h a week", StringComparison.Ordinal));
        Assert.Contains(by.Limits, l => l.Kind == LimitKind.TimesAWeek);
    }

    [Fact]
    public void Client_unseen_for_a_year_is_left_out_and_counted()
    {
        Strung("Long gone", TestShop.Today.AddMonths(-12).AddDays(-1));
        Strung("Just within", TestShop.Today.AddMonths(-12));

        Assert.Equal(["Just within"], Due.Households.Select(h => h.Client.Client));
        Assert.Equal(1, Due.Unseen);
        Assert.Equal(2, _shop.Get<DueStore>().List(withUnseen: true).Households.Count);
    }

    /// <summary>Those who have not come for years are first by date, and must not use up what is counted.</summary>
    [Theory]
    [InlineData("", "1000+ clients not seen for 12 months")]
    [InlineData("UPDATE client SET reminders = 0 WHERE name LIKE 'Lapsed%'", "1000+ clients who want no reminders")]
    public async Task Many_lapsed_clients_leave_the_counts_of_the_others_right(string change, string leftOut)
    {
        _shop.Records.Shop();
        Strung("Past", TestShop.Today.AddDays(-60));
        _shop.Records.Change("""
            WITH RECURSIVE n (i) AS (SELECT 10001 UNION ALL SELECT i + 1 FROM n WHERE i < 11100) INSERT INTO client (id, name) SELECT i, 'Lapsed ' || i FROM n;
            INSERT INTO player (id, client_id, name, junior, times_a_week, hours_a_time) SELECT id, id, name, 0, 2, 1.5 FROM client WHERE id > 10000;
            INSERT INTO racket (id, player_id, number, state, sport, pattern_mains, pattern_crosses) SELECT id, id, 1, 'InTurn', 'Tennis', 16, 19 FROM player WHERE id > 10000;
            INSERT INTO job (id, ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension, tension_unit,
                             received_on, strung_on, collected_on)
            SELECT r.id, r.id, r.id, 'Collected', k.id, k.id, 'Shop', 'Shop', 52, 50, 'Lb', '2024-03-01', '2024-03-01', '2024-03-01' FROM racket r, string_kind k WHERE r.id > 10000;
            """ + change);

        var list = Due;

        Assert.Equal(("1", "1"), (list.RacketsShown, list.ClientsShown));
        Assert.Equal(["Past"], list.Households.Select(h => h.Client.Client));
        Assert.Contains($"Left out: {leftOut}.", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
        Assert.Equal("1000+", _shop.Get<DueStore>().List(withUnseen: true).RacketsShown);
    }

    [Fact]
    public void Client_seen_with_another_racket_is_not_unseen()
    {
        var (_, player, _) = Strung("Loyal", TestShop.Today.AddMonths(-15));
        _shop.Records.Job(_shop.Records.Racket(player, number: 2), strungOn: TestShop.Today.AddDays(-3));

        Assert.Equal(0, Due.Unseen);
        Assert.Single(Due.Households);
    }

    [Theory]
    [InlineData("UPDATE racket SET state = 'Resting'")]
    [InlineData("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'")]
    [InlineData("UPDATE racket SET own_date = '2027-06-01'")]
    public void Racket_at_rest_without_strings_or_with_a_later_date_of_the_owners_is_not_due(string change)
    {
        Strung("Past", TestShop.Today.AddDays(-60));
        _shop.Database.Write(c => c.Execute(change));

        Assert.Empty(Due.Households);
    }

    [Fact]
    public void Pages_by_key_hold_every_household_once_and_in_order()
    {
        var random = new Random(20261126);
        for (var n = 0; n < 23; n++)
        {
            var (_, player, _) = Strung($"Client {n}", TestShop.Today.AddDays(-random.Next(60, 160)));
            for (var number = 2; number <= 1 + (n % 3); number++)
                _shop.Records.Job(_shop.Records.Racket(player, number: number), strungOn: TestShop.Today.AddDays(-random.Next(60, 160)));
        }
        var store = _shop.Get<DueStore>();
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
        var (_, _, racket) = Strung("Past", TestShop.Today.AddDays(-60));
        _shop.Records.Job(racket);

        Assert.Empty(Due.Households);
    }
}
