using TagPage.Core.Rackets;
using TagPage.Records.LostAndFound;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.LostAndFound;

/// <summary>Who may mark a racket as lost and as back, and what nobody may write about it.</summary>
public sealed class LostStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly LostStore _store;

    public LostStoreTests() => _store = new LostStore(_street.Database, _street.Clock);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true, true)]
    [InlineData(Actor.Owner, true, false)]
    [InlineData(Actor.OtherClient, false, false)]
    [InlineData(Actor.Finder, false, false)]
    [InlineData(Actor.Program, false, false)]
    public void Racket_is_marked_lost_and_back_by_whom_it_concerns(Actor actor, bool allowed, bool whenSold)
    {
        var who = _street.Be(actor);
        _street.Check(allowed, () => Lose(who));
        Assert.Equal(allowed, _store.Get(who, _street.Racket) is not null);
        _street.Records.Change("UPDATE racket SET lost_since = '2026-11-20'");
        _street.Check(allowed, () => _store.Back(who, _street.Racket));

        _street.Records.Change("UPDATE racket SET state = 'Sold', lost_since = '2026-11-20'");
        _street.Check(whenSold, () => Lose(who));
        _street.Check(whenSold, () => _store.Back(who, _street.Racket));
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Day_lies_within_the_last_year_unless_it_stood_there_before(Actor actor)
    {
        var who = _street.Be(actor);
        _street.Refused<LostInFuture>(() => Lose(who, since: "2026-11-26"));
        _street.Refused<LostLongAgo>(() => Lose(who, since: "2025-11-24"));
        _street.Check(true, () => Lose(who, since: "2025-11-25"));

        _street.Records.Change("UPDATE racket SET lost_since = '2024-05-01'");
        _street.Check(true, () => Lose(who, since: "2024-05-01", note: "Left at court 4"));
    }

    [Theory]
    [InlineData("Ring Odalys", LostNoteFault.Name)]
    [InlineData("It is Pim’s", LostNoteFault.Name)]
    [InlineData("Ask Benedikta", LostNoteFault.Name)]
    [InlineData("Ring 07946 0958", LostNoteFault.Digits)]
    [InlineData("See court.example", LostNoteFault.Link)]
    [InlineData("odalys@x", LostNoteFault.MailSign)]
    public void Note_that_leads_to_a_person_is_refused_whoever_wrote_it(string note, LostNoteFault fault)
    {
        _street.Records.Change("UPDATE client SET second_name = 'Benedikta Sorrel' WHERE id = @Odalys", new { _street.Odalys });
        foreach (var actor in new[] { Actor.Shop, Actor.Owner })
            Assert.Equal(fault, _street.Refused<LostNoteUnfit>(() => Lose(_street.Be(actor), note: note)).Fault);
    }

    [Theory]
    [InlineData(Actor.Shop, RacketState.Sold)]
    [InlineData(Actor.Shop, RacketState.Gone)]
    [InlineData(Actor.Owner, RacketState.Gone)]
    public void Nobody_looks_for_a_racket_that_is_no_longer_theirs(Actor actor, RacketState state)
    {
        _street.Records.Change($"UPDATE racket SET state = '{state}'");

        Assert.Equal(state, _street.Refused<LostAway>(() => Lose(_street.Be(actor))).State);
    }

    [Fact]
    public void Back_twice_changes_nothing_more()
    {
        Lose(Who.Shop);
        _store.Back(Who.Shop, _street.Racket);
        var version = _street.Records.Text("SELECT version FROM racket");

        Assert.IsType<Outcome.Done>(_store.Back(Who.Shop, _street.Racket));
        Assert.Equal(version, _street.Records.Text("SELECT version FROM racket"));
    }

    private Outcome Lose(Who who, string since = "2026-11-24", string note = "Left at court 3") =>
        _store.Lose(who, _street.Racket, new LostEntry { Since = DateOnly.Parse(since, System.Globalization.CultureInfo.InvariantCulture), Note = note });
}
