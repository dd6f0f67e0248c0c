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

    private void Strung(string client, DateOnly on) =>
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_shop.Records.Client(client), client)), strungOn: on);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void The_reasons_come_along_limit_by_limit()
    {
        Strung("Past", TestShop.Today.AddDays(-60));

        var by = Due.Households[0].Rackets[0].By;

        Assert.Equal(LimitKind.Hours, by.DecidedBy);
        Assert.Contains(by.Limits, l => l is { Kind: LimitKind.Hours, Counts: true } && Languages.English.Why(l).Contains("3 h a week", StringComparison.Ordinal));
        Assert.Contains(by.Limits, l => l.Kind == LimitKind.TimesAWeek);
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
}
