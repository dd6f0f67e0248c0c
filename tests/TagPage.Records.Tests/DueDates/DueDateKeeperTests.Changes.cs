using TagPage.Core.Forecast;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.DueDates;

/// <summary>Whatever may happen to a shop's rackets from one day to the next.</summary>
public sealed partial class DueDateKeeperTests
{
    private sealed record Change(string Name, Action<DueDateKeeperTests, Random> Do);

    private static readonly Change[] Changes =
    [
        new("habit", (t, r) => t.Sql("UPDATE player SET times_a_week = @a, hours_a_time = @b WHERE id = @id", new { a = r.Next(1, 9), b = r.Next(1, 4), id = Player(r) })),
        new("rule", (t, r) => t.Sql("UPDATE player SET rule = @rule, every_weeks = @weeks, hitting = @hitting WHERE id = @id", new
        {
            rule = r.Next(3) == 0 ? null : Enum.GetValues<RestringRule>()[r.Next(5)].ToString(),
            weeks = r.Next(1, 30),
            hitting = new[] { "Easy", "Average", "Hard" }[r.Next(3)],
            id = Player(r),
        })),
        new("state", (t, r) => t.Sql("UPDATE racket SET state = @state WHERE id = @id", new { state = new[] { "InTurn", "Spare", "Resting", "Damaged" }[r.Next(4)], id = Racket(r) })),
        new("own date", (t, r) => t.Sql("UPDATE racket SET own_date = @day WHERE id = @id", new { day = r.Next(2) == 0 ? t.Today.AddDays(r.Next(60)) : (DateOnly?)null, id = Racket(r) })),
        new("pattern", (t, r) => t.Sql("UPDATE racket SET pattern_mains = @mains WHERE id = @id", new { mains = r.Next(14, 20), id = Racket(r) })),
        new("elsewhere", (t, r) => t.Sql("UPDATE racket SET elsewhere_on = @day WHERE id = @id", new { day = r.Next(2) == 0 ? t.Today.AddDays(-r.Next(20)) : (DateOnly?)null, id = Racket(r) })),
        new("other player", (t, r) => t.Sql("UPDATE racket SET player_id = @player, number = (SELECT MAX(number) + 1 FROM racket) WHERE id = @id", new { player = Player(r), id = Racket(r) })),
        new("pause", (t, r) => t.Sql("INSERT INTO pause (player_id, from_on, to_on) VALUES (@id, @from, @to)", new { id = Player(r), from = t.Today.AddDays(-r.Next(40)), to = r.Next(4) == 0 ? null : (DateOnly?)t.Today.AddDays(r.Next(20)) })),
        new("pause taken away", (t, _) => t.Sql("DELETE FROM pause WHERE id = (SELECT MAX(id) FROM pause)")),
        new("hours logged", (t, r) => t.Sql("INSERT INTO logged_hours (racket_id, played_on, hours) VALUES (@id, @day, @hours)", new { id = Racket(r), day = t.Today.AddDays(-r.Next(30)), hours = r.Next(1, 8) })),
        new("log taken away", (t, _) => t.Sql("DELETE FROM logged_hours WHERE id = (SELECT MIN(id) FROM logged_hours)")),
        new("reading", (t, r) => t.Sql("""
            INSERT INTO reading (job_id, first, taken_on, instrument_id, value)
            SELECT job_id, 0, @day, instrument_id, @value FROM reading WHERE first = 1 AND taken_on <= @day ORDER BY job_id * @x % 97 LIMIT 1
            """, new { day = t.Today.AddDays(-r.Next(20)), value = r.Next(40, 62), x = r.Next(1, 97) })),
        new("reading taken away", (t, _) => t.Sql("DELETE FROM reading WHERE id = (SELECT MAX(id) FROM reading WHERE first = 0)")),
        new("scale", (t, r) => t.Sql("UPDATE instrument SET scale = @scale WHERE id = 1", new { scale = r.Next(2) == 0 ? "Hertz" : "Stiffness" })),
        new("material", (t, r) => t.Sql("UPDATE string_kind SET material = @material, gauge_mm = @gauge WHERE id = 1", new { material = new[] { "Polyester", "Aramid", "NaturalGut" }[r.Next(3)], gauge = 1.16 + (r.Next(5) * 0.05) })),
        new("broke", (t, r) => t._street.Database.Write(c =>
        {
            if (BedStore.Current(c, Racket(r)) is { } bed)
                BedStore.End(c, bed.JobId, bed.StrungOn.AddDays(r.Next(30)), Enum.GetValues<BedEnd>()[r.Next(6)]);
        })),
        new("restring", (t, r) =>
        {
            var job = t._street.Records.Job(Racket(r));
            t.Sql("UPDATE job SET received_on = '2026-01-01' WHERE id = @job", new { job });
            t.Moves.MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = t.Today.AddDays(-r.Next(3)), Reading = r.Next(55, 66), InstrumentId = 1 });
        }),
        new("back", (t, r) => new BackStore(t._street.Database, t._street.Time).Back(Who.Shop, r.Next(1, 20), JobState.Strung)),
        new("day corrected", (t, r) => t.Sql("UPDATE job SET strung_on = date(strung_on, '-1 day') WHERE id = @id AND strung_on IS NOT NULL", new { id = r.Next(1, 20) })),
        new("settings", (t, r) =>
        {
            t.Shorten(r.Next(5, 30));
            t._worker.Run();
        }),
        new("a day later", (t, r) =>
        {
            t._street.Time.Advance(TimeSpan.FromDays(r.Next(1, 4)));
            t._worker.Run();
        }),
    ];
}
