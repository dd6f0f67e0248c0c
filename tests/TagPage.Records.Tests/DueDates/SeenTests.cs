using Dapper;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>When a client was last seen is kept beside the client, and is always what the jobs say.</summary>
public sealed class SeenTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("INSERT INTO job (ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension, tension_unit, received_on) SELECT 900, racket_id, 'Waiting', mains_id, crosses_id, 'Shop', 'Shop', 50, 50, 'Lb', '2026-11-24' FROM job LIMIT 1", "2026-11-24", "")]
    [InlineData("UPDATE job SET received_on = '2026-10-01'", "2026-10-01", "")]
    [InlineData("DELETE FROM job", "", "")]
    [InlineData("UPDATE racket SET number = 7, player_id = (SELECT id FROM player WHERE name LIKE 'Ewan%') WHERE player_id IN (SELECT id FROM player WHERE name LIKE 'Pim%')", "", "2026-11-01")]
    [InlineData("UPDATE player SET client_id = (SELECT id FROM client WHERE name LIKE 'Ewan%') WHERE name LIKE 'Pim%'", "", "2026-11-01")]
    [InlineData("UPDATE job SET racket_id = (SELECT r.id FROM racket r JOIN player p ON p.id = r.player_id WHERE p.name LIKE 'Ewan%')", "", "2026-11-01")]
    public void Whatever_moves_a_job_moves_the_day_its_client_was_seen(string sql, string odalys, string ewan)
    {
        _street.Records.Racket(_street.Records.Player(_street.Ewan, "Ewan Lockyer"));
        _street.Records.Change("UPDATE job SET received_on = '2026-11-01'");

        _street.Records.Change(sql);

        Assert.Equal((odalys, ewan), (Seen(_street.Odalys), Seen(_street.Ewan)));
    }

    [Theory]
    [InlineData("UPDATE string_kind SET material = material, gauge_mm = gauge_mm, note = 'Soft.'")]
    [InlineData("UPDATE player SET times_a_week = times_a_week, rule = rule, note = 'Left-handed.'")]
    [InlineData("UPDATE racket SET state = state, own_date = own_date, note = 'Squeaks.'")]
    [InlineData("UPDATE job SET mains_id = mains_id, strung_on = strung_on, note = 'Slow.'")]
    [InlineData("UPDATE instrument SET scale = scale, name = name || '!'")]
    public void Save_that_changes_nothing_a_date_depends_on_works_no_dates_out(string sql)
    {
        _street.Records.Reading(_street.Strung, 62);
        _street.Records.Change("DELETE FROM due_again");

        _street.Records.Change(sql);

        Assert.Equal(0, _street.Records.Count("due_again"));
    }

    private string Seen(long client) => _street.Database.Read(c => c.ExecuteScalar<string>("SELECT seen_on FROM client WHERE id = @client", new { client }))!;
}
