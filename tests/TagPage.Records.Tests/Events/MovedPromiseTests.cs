using TagPage.Records.Events;

namespace TagPage.Records.Tests.Events;

/// <summary>What presses at the desk do to what was promised to others.</summary>
public sealed class MovedPromiseTests : IDisposable
{
    private readonly Fair _fair = new();

    public void Dispose() => _fair.Dispose();

    private DeskMoveStore Moves => _fair.Moves;

    [Fact]
    public void On_court_goes_first_and_those_it_makes_late_are_to_be_told()
    {
        var first = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var second = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var last = _fair.TakeIn();

        Fair.Done(Moves.PutOnCourt(_fair.Helper, _fair.Id, last, true));

        Assert.Equal([last, first, second], _fair.Board.NextUp.Select(entry => entry.Number));
        Assert.Equal((second, Fair.At(10, 30), Fair.At(11)), (Assert.Single(_fair.Board.ToTell).Number, _fair.Of(second).MovedFrom, _fair.Of(second).Promised));
    }

    [Fact]
    public void Owner_of_a_racket_that_was_withdrawn_is_not_to_be_told()
    {
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var second = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        Fair.Done(_fair.Technicians.SetAway(_fair.Helper, _fair.Id, _fair.Bram, true));
        Assert.Equal(second, Assert.Single(_fair.Board.ToTell).Number);

        Fair.Done(Moves.Withdraw(_fair.Helper, _fair.Id, second));

        Assert.Empty(_fair.Board.ToTell);
    }

    [Fact]
    public void Promise_that_can_be_kept_after_all_is_promised_again_before_its_owner_was_told()
    {
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var second = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        Fair.Done(_fair.Technicians.SetAway(_fair.Helper, _fair.Id, _fair.Bram, true));
        Assert.Equal(Fair.At(11), _fair.Of(second).Promised);

        Fair.Done(_fair.Technicians.SetAway(_fair.Helper, _fair.Id, _fair.Bram, false));

        Assert.Empty(_fair.Board.ToTell);
        Assert.Equal(Fair.At(10, 30), _fair.Of(second).Promised);
    }

    [Fact]
    public void Promise_that_was_moved_and_told_stays_as_it_was_told()
    {
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var second = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        Fair.Done(_fair.Technicians.SetAway(_fair.Helper, _fair.Id, _fair.Bram, true));
        Fair.Done(_fair.Moves.Told(_fair.Helper, _fair.Id, second));

        Fair.Done(_fair.Technicians.SetAway(_fair.Helper, _fair.Id, _fair.Bram, false));

        Assert.Equal(Fair.At(11), _fair.Of(second).Promised);
    }

    [Fact]
    public void Broken_machine_moves_the_promises_it_would_have_kept_and_gives_its_racket_back()
    {
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var second = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });

        Fair.Done(_fair.Technicians.SetAway(_fair.Helper, _fair.Id, _fair.Bram, true));

        Assert.Equal((second, Fair.At(11)), (Assert.Single(_fair.Board.ToTell).Number, _fair.Of(second).Promised));
        _fair.Street.Refused<TechnicianNotThere>(() => Moves.Take(_fair.Helper, _fair.Id, second, _fair.Bram));
    }

    /// <summary>Its owner took a later time because the match could not be kept; then others went away.</summary>
    [Fact]
    public void Racket_that_can_reach_its_match_after_all_goes_earlier_in_the_order_and_its_owner_is_told_before_it_is_promised()
    {
        using var fair = new Fair(bram: false);
        var first = fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var idle = fair.TakeIn();
        var late = fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 40) });
        Assert.Equal([first, idle, late], fair.Board.NextUp.Select(entry => entry.Number));
        fair.Street.Refused<MatchOutOfReach>(() => fair.Moves.PromiseMatch(fair.Helper, fair.Id, late));

        Fair.Done(fair.Moves.Withdraw(fair.Helper, fair.Id, first));

        Assert.Equal([late, idle], fair.Board.NextUp.Select(entry => entry.Number));
        Assert.Equal((Fair.At(10, 30), Fair.At(11, 30)), (fair.Board.ReadyAt(fair.Of(late)), fair.Of(late).Promised));
        Assert.Equal([late], fair.Board.InTimeAfterAll.Select(entry => entry.Number));
        for (var press = 0; press < 2; press++)
            Fair.Done(fair.Moves.PromiseMatch(fair.Helper, fair.Id, late));
        Assert.Equal(Fair.At(10, 40), fair.Of(late).Promised);
        Assert.Empty(fair.Board.InTimeAfterAll);
        Assert.Empty(fair.Board.ToTell);
    }

    [Fact]
    public void Of_two_that_could_reach_their_matches_after_all_the_earlier_one_does_and_the_other_is_not_to_be_pulled_before_it()
    {
        using var fair = new Fair(bram: false);
        var first = fair.TakeIn();
        var (later, earlier) = (fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 40) }), fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 35) }));

        Fair.Done(fair.Moves.Withdraw(fair.Helper, fair.Id, first));

        Assert.Equal([earlier, later], fair.Board.NextUp.Select(entry => entry.Number));
        Assert.Equal([earlier], fair.Board.InTimeAfterAll.Select(entry => entry.Number));
        Assert.Empty(fair.Board.WorthPulling);
    }

    /// <summary>Before lunch there is room for one of the two; the one that is due first can as well wait until after it.</summary>
    [Fact]
    public void Desk_says_whom_to_pull_forward_where_a_break_makes_that_the_better_order()
    {
        using var fair = new Fair(bram: false);
        fair.Wait(140);
        var first = fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(14, 20), Minutes = 20 });
        var late = fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(14, 25), Insist = true });
        Assert.Equal(Fair.At(14, 30), fair.Board.ReadyAt(fair.Of(late)));

        Assert.Equal((late, Fair.At(12, 50)), Assert.Single(fair.Board.WorthPulling.Select(worth => (worth.Entry.Number, worth.Ready))));
        Fair.Done(fair.Moves.PullForward(fair.Helper, fair.Id, late, true));

        Assert.Equal((Fair.At(14, 20), Fair.At(12, 50)), (fair.Board.ReadyAt(fair.Of(first)), fair.Board.ReadyAt(fair.Of(late))));
        Assert.Empty(fair.Board.ToTell);
        Assert.Empty(fair.Board.WorthPulling);
    }

    [Fact]
    public void After_rain_all_that_waits_moves_and_what_is_strung_stays()
    {
        var strung = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(12) });
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, strung, _fair.Runa));
        Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, strung));
        var waiting = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(14), NotBefore = Fair.At(13) });

        Fair.Done(_fair.Shifts.Shift(_fair.Helper, _fair.Id, 75));

        Assert.Equal((Fair.At(15, 15), Fair.At(15, 15), Fair.At(14, 15)), (_fair.Of(waiting).NeededBy, _fair.Of(waiting).Promised, _fair.Of(waiting).NotBefore));
        Assert.Equal(Fair.At(12), _fair.Of(strung).NeededBy);
        _fair.Street.Refused<ShiftUnlikely>(() => _fair.Shifts.Shift(_fair.Helper, _fair.Id, 0));
    }
}
