using System.Diagnostics;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Events;

/// <summary>A desk with three hundred open rackets and eight technicians.</summary>
public sealed class FullDeskTests(ITestOutputHelper output) : IDisposable
{
    private const int Rackets = 300;

    private readonly Fair _fair = new();

    public void Dispose() => _fair.Dispose();

    [Fact]
    public void All_that_the_desk_says_of_them_is_worked_out_in_time()
    {
        Fill();
        _fair.Street.Records.Change("UPDATE event_entry SET needed_by = '2026-11-25 10:20' WHERE number % 3 = 0");

        var times = Enumerable.Range(0, 21).Select(_ =>
        {
            var board = _fair.Board;
            var clock = Stopwatch.StartNew();
            Assert.Equal(Rackets, board.NextUp.Count());
            Assert.Equal((100, 0, 0), (board.AtRisk.Count() + board.InTimeAfterAll.Count(), board.WorthPulling.Count, board.ToTell.Count()));
            return clock.Elapsed.TotalMilliseconds;
        }).Order().ToList();

        output.WriteLine($"{Rackets} open rackets ordered, a hundred of them promised for after their match, with whom to pull forward: median {times[10]:0.0} ms, slowest {times[20]:0.0} ms");
        // Other tests run beside it: the quickest quarter is held to what is promised of a machine of its own.
        Assert.True(times[5] < 50, $"{times[5]} ms");
    }

    [Fact]
    public void Press_reorders_them_all_and_moves_only_the_promise_that_it_breaks()
    {
        Fill();
        Assert.Equal((Rackets, 8), (_fair.Board.Desk.Plan.Placements.Count, _fair.Board.Technicians.Count));

        var times = Enumerable.Range(2, 21).Select(number =>
        {
            var clock = Stopwatch.StartNew();
            Fair.Done(_fair.Moves.PutOnCourt(Who.Shop, _fair.Id, number, true));
            return clock.Elapsed.TotalMilliseconds;
        }).Order().ToList();

        output.WriteLine($"a press at a desk with {Rackets} open rackets, read, ordered twice and written: median {times[10]:0.0} ms, slowest {times[20]:0.0} ms");
        Assert.Equal([1], _fair.Board.ToTell.Select(entry => entry.Number));
    }

    private void Fill()
    {
        _fair.TakeIn();
        _fair.Street.Records.Change("""
            INSERT INTO event_technician (event_id, name) SELECT 1, 'Technician ' || value FROM generate(3, 8);
            INSERT INTO event_hours (technician_id, from_at, to_at) SELECT id, '2026-11-25 09:00', '2026-11-29 23:00' FROM event_technician;
            INSERT INTO job (ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension, tension_unit, received_on)
            SELECT 5000 + value, 1, 'Waiting', 1, 1, 'Shop', 'Shop', 52, 50, 'Lb', '2026-11-25' FROM generate(2, @Rackets);
            INSERT INTO event_entry (job_id, event_id, number, came_at, promised) SELECT id, 1, ticket - 5000, '2026-11-25 09:00', '2026-11-29 20:00' FROM job WHERE ticket > 5000;
            UPDATE event SET last_number = @Rackets;
            """.Replace("generate(3, 8)", Series(3, "8"), StringComparison.Ordinal).Replace("generate(2, @Rackets)", Series(2, "@Rackets"), StringComparison.Ordinal), new { Rackets });
    }

    private static string Series(int from, string to) =>
        $"(WITH RECURSIVE n (value) AS (SELECT {from} UNION ALL SELECT value + 1 FROM n WHERE value < {to}) SELECT value FROM n)";
}
