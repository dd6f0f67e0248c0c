using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Stops;

/// <summary>The academy's desk, the drop box and the lido, in this order.</summary>
public sealed class StopStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _desk, _box, _lido;

    public StopStoreTests() => (_desk, _box, _lido) = (Add("Academy desk", StopKind.Desk), Add("Drop box", StopKind.DropBox), Add("Lido", StopKind.Bench));

    private StopStore Store => new(_street.Database, _street.Clock);

    private IEnumerable<string> Names => Store.InUse().Select(stop => stop.Name);

    private static StopEntry Stop(string name, StopKind kind = StopKind.Desk) => new() { FormKey = FormKey.New(), Version = 1, Name = name, Kind = kind };

    private long Add(string name, StopKind kind) => ((Outcome.Done)Store.Add(Who.Shop, Stop(name, kind))).Id;

    private void Ticket(string state, string more = "") => _street.Records.Change($"""
        UPDATE job SET state = '{state}', strung_on = CASE WHEN '{state}' IN ('Strung', 'Collected') THEN '2026-11-25' END, collected_on = CASE '{state}' WHEN 'Collected' THEN '2026-11-25' END WHERE id = @job;
        INSERT OR REPLACE INTO job_stop (job_id, left_at, collect_at) VALUES (@job, @_desk, @_box);
        {more}
        """, new { job = _street.Strung, _desk, _box });

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Stop_comes_earlier_by_one_press_and_the_first_stays_first()
    {
        _street.Check(true, () => Store.Earlier(Who.Shop, _lido));
        Assert.Equal(["Academy desk", "Lido", "Drop box"], Names);

        Store.Earlier(Who.Shop, _desk);
        Assert.Equal(["Academy desk", "Lido", "Drop box"], Names);
    }

    [Fact]
    public void Stop_that_is_no_longer_used_is_passed_over_and_listed_last()
    {
        Store.Change(Who.Shop, _box, Stop("Drop box") with { IsEnded = true });
        Store.Earlier(Who.Shop, _lido);

        Assert.Equal(["Lido", "Academy desk"], Names);
        Assert.Equal(["Lido", "Academy desk", "Drop box"], Store.List().Select(stop => stop.Name));
    }

    [Fact]
    public void Two_stops_of_one_name_are_refused_and_a_form_sent_twice_adds_one()
    {
        _street.Refused<StopNameTaken>(() => Store.Change(Who.Shop, _box, Stop("academy DESK")));

        var twice = Stop("Club bar");
        Assert.Equal(Store.Add(Who.Shop, twice), Store.Add(Who.Shop, twice));
        Assert.Equal(4, Store.List().Count);
    }

    [Theory]
    [InlineData("Waiting", true, true)]
    [InlineData("OnMachine", false, true)]
    [InlineData("Strung", false, true)]
    [InlineData("Collected", false, false)]
    [InlineData("Cancelled", false, false)]
    public void Stop_with_rackets_there_or_on_their_way_there_does_not_end(string state, bool holdsDesk, bool holdsBox)
    {
        Ticket(state);

        foreach (var (stop, held) in new[] { (_desk, holdsDesk), (_box, holdsBox) })
        {
            var outcome = Store.Change(Who.Shop, stop, Stop($"Stop {stop}") with { IsEnded = true });
            Assert.Equal(held ? new Outcome.Refused(new StopHasRackets(1)) : new Outcome.Done(stop), outcome);
        }
    }

    [Fact]
    public void Stop_from_which_the_racket_was_fetched_may_end()
    {
        Ticket("Waiting", "UPDATE job_stop SET fetched_at = '2026-11-25T09:00:00.000Z'");

        Assert.IsType<Outcome.Done>(Store.Change(Who.Shop, _desk, Stop("Academy desk") with { IsEnded = true }));
    }
}
