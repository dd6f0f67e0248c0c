using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Sports;
using TagPage.Records.Events;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Events;

public sealed class DeskMoveStoreTests : IDisposable
{
    private readonly Fair _fair = new();

    public void Dispose() => _fair.Dispose();

    private DeskMoveStore Moves => _fair.Moves;

    [Fact]
    public void Racket_goes_from_the_queue_to_its_player_and_its_ticket_goes_along()
    {
        var number = _fair.TakeIn();
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
        _fair.Wait(22);
        Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        _fair.Wait(5);
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, number, null));

        var entry = _fair.Of(number);
        Assert.Equal((Fair.At(10), Fair.At(10, 22), Fair.At(10, 27)), (entry.StartedAt, entry.StrungAt, entry.HandedAt));
        Assert.Equal((JobState.Collected, true), (entry.State, entry.IsUnpaid));
        Assert.Equal(1, _fair.Street.Records.Count("job", $"id = {entry.JobId} AND strung_on = '2026-11-25' AND collected_on = '2026-11-25' AND strung_by = 'Runa' AND machine = 'Table'"));
    }

    [Fact]
    public void Racket_paid_at_the_desk_has_a_payment_in_cash()
    {
        var number = _fair.TakeIn();
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
        Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, number, PaymentMethod.Cash));

        var entry = _fair.Of(number);
        Assert.False(entry.IsUnpaid);
        Assert.Equal($"{entry.PriceMinor}|Cash|Event", _fair.Street.Records.Text($"SELECT amount_minor || '|' || method || '|' || made_by FROM payment WHERE id = (SELECT payment_id FROM payment_share WHERE job_id = {entry.JobId})"));
    }

    [Theory]
    [InlineData(PaymentMethod.Card)]
    [InlineData(PaymentMethod.Transfer)]
    public void Racket_is_paid_as_it_was_paid_at_hand_out_and_afterwards(PaymentMethod method)
    {
        foreach (var number in new[] { _fair.TakeIn(), _fair.TakeIn("Ilse Marrow") })
        {
            Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
            Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        }
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, 1, method));
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, 2, null));
        Fair.Done(Moves.Pay(_fair.Helper, _fair.Id, 2, method));

        Assert.Equal(2, _fair.Street.Records.Count("payment", $"amount_minor = 1200 AND method = '{method}' AND made_by = 'Event'"));
    }

    [Fact]
    public void Technician_with_a_racket_on_the_machine_is_asked_before_a_second_one_and_may_take_it()
    {
        var (first, second) = (_fair.TakeIn(), _fair.TakeIn("Ilse Marrow"));
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, first, _fair.Runa));

        var why = _fair.Street.Refused<StillOnMachine>(() => Moves.Take(_fair.Helper, _fair.Id, second, _fair.Runa));
        Assert.Equal((second, _fair.Runa, "Runa", first), (why.Number, why.Technician, why.By, why.First));

        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, second, _fair.Runa, asSecond: true));
        Assert.Equal([first, second], _fair.Board.In(JobState.OnMachine).Select(entry => entry.Number));
    }

    [Fact]
    public void Racket_on_a_players_account_is_paid_later_once_and_not_before_it_is_handed_out()
    {
        var number = _fair.TakeIn();
        _fair.Street.Refused<EntryMovedOn>(() => Moves.Pay(_fair.Helper, _fair.Id, number, PaymentMethod.Cash));
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
        Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, number, null));
        Assert.Equal([number], _fair.Board.Owed.Select(entry => entry.Number));

        Fair.Done(Moves.Pay(_fair.Helper, _fair.Id, number, PaymentMethod.Cash));
        Fair.Done(Moves.Pay(_fair.Helper, _fair.Id, number, PaymentMethod.Cash));

        Assert.Empty(_fair.Board.Owed);
        Assert.Equal(1, _fair.Street.Records.Count("payment", "amount_minor = 1200 AND method = 'Cash'"));
    }

    [Fact]
    public void Strings_before_it_were_cut_out()
    {
        var number = (int)Fair.Done(_fair.Intakes.Add(Who.Shop, _fair.Id, _fair.Entry() with { RacketId = _fair.Street.Racket }));
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
        Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));

        Assert.Equal(1, _fair.Street.Records.Count("job", $"id = {_fair.Street.Strung} AND ended_on = '2026-11-25' AND ended_how = 'CutOut'"));
    }

    [Fact]
    public void Of_two_who_take_the_same_racket_one_gets_it_and_the_other_is_told()
    {
        var number = _fair.TakeIn();
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));

        var why = _fair.Street.Refused<EntryMovedOn>(() => Moves.Take(_fair.Helper, _fair.Id, number, _fair.Bram));
        Assert.Equal((JobState.OnMachine, "Runa"), (why.State, why.By));
        Assert.Equal(_fair.Runa, _fair.Of(number).TechnicianId);
    }

    [Fact]
    public async Task Of_eight_at_the_same_time_one_gets_it()
    {
        var number = _fair.TakeIn();

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(at =>
            Task.Run(() => Moves.Take(_fair.Helper, _fair.Id, number, at % 2 == 0 ? _fair.Runa : _fair.Bram), TestContext.Current.CancellationToken)));

        Assert.Single(outcomes.OfType<Outcome.Done>());
        Assert.All(outcomes.OfType<Outcome.Refused>(), refused => Assert.IsType<EntryMovedOn>(refused.Why));
    }

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

    /// <summary>Its owner took a later time because the match could not be kept; then others went away.</summary>
    [Fact]
    public void Desk_says_who_could_reach_the_match_after_all()
    {
        using var fair = new Fair(bram: false);
        var first = fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var idle = fair.TakeIn();
        var late = fair.TakeIn();
        fair.Street.Records.Change("UPDATE event_entry SET needed_by = '2026-11-25 10:40' WHERE number = @late", new { late });
        Assert.True(fair.Board.ReadyAt(fair.Of(late)) > fair.Of(late).NeededBy);
        Assert.Empty(fair.Board.WorthPulling);

        Fair.Done(fair.Moves.Withdraw(fair.Helper, fair.Id, first));

        var (entry, ready) = Assert.Single(fair.Board.WorthPulling);
        Assert.Equal((late, Fair.At(10, 30)), (entry.Number, ready));
        Fair.Done(fair.Moves.PullForward(fair.Helper, fair.Id, late, true));
        Assert.Equal([late, idle], fair.Board.NextUp.Select(next => next.Number));
        Assert.Empty(fair.Board.WorthPulling);
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

    [Fact]
    public void Racket_on_a_machine_that_broke_is_flagged_until_it_is_put_back()
    {
        var number = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(15) });
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Bram));
        Fair.Done(_fair.Technicians.SetAway(_fair.Helper, _fair.Id, _fair.Bram, true));
        Assert.Equal([(number, Pressure.Late)], _fair.Board.AtRisk.Select(entry => (entry.Number, _fair.Board.Pressure(entry))));

        Fair.Done(Moves.PutBack(_fair.Helper, _fair.Id, number));
        Assert.Empty(_fair.Board.AtRisk);
    }

    [Fact]
    public void What_is_left_at_night_is_listed_with_where_it_lies_the_longest_first()
    {
        var (one, other) = (_fair.TakeIn(), _fair.TakeIn("Ilse Marrow"));
        foreach (var number in new[] { other, one })
        {
            Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
            _fair.Wait(20);
            Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        }
        Fair.Done(Moves.Lay(_fair.Helper, _fair.Id, one, "shelf 2"));

        Assert.Equal([(other, ""), (one, "shelf 2")], _fair.Board.Uncollected.Select(entry => (entry.Number, entry.Lies)));
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, other, null));
        Assert.Equal([one], _fair.Board.Uncollected.Select(entry => entry.Number));
        _fair.Street.Refused<EntryMovedOn>(() => Moves.Lay(_fair.Helper, _fair.Id, other, "shelf 3"));
    }

    [Fact]
    public void Put_back_it_waits_again()
    {
        var number = _fair.TakeIn();
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
        Fair.Done(Moves.PutBack(_fair.Helper, _fair.Id, number));

        Assert.Equal((JobState.Waiting, null, null), (_fair.Of(number).State, _fair.Of(number).TechnicianId, _fair.Of(number).StartedAt));
    }

    [Fact]
    public void Technicians_next_racket_is_the_first_of_their_plan()
    {
        var kept = _fair.TakeIn(but: entry => entry with { KeptFor = _fair.Bram });
        var anybodys = _fair.TakeIn();

        Assert.Equal((anybodys, kept), (_fair.Board.NextFor(_fair.Runa)!.Number, _fair.Board.NextFor(_fair.Bram)!.Number));
    }

    [Fact]
    public void Minutes_are_learned_from_what_was_timed()
    {
        for (var round = 0; round < 6; round++)
        {
            var number = _fair.TakeIn();
            Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Bram));
            _fair.Wait(18);
            Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        }

        // Three of 30 are assumed: (90 + 6 x 18) / 9 = 22.
        Assert.Equal(22, _fair.Board.Technician(_fair.Bram)!.Minutes[Sport.Tennis]);
        Assert.Empty(_fair.Board.Technician(_fair.Runa)!.Minutes);
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

    [Fact]
    public void Racket_that_nobody_needs_at_a_certain_time_is_not_close_from_the_moment_it_came()
    {
        _fair.TakeIn();

        Assert.Empty(_fair.Board.AtRisk);
    }

    [Fact]
    public void Late_ones_are_seen_before_it_is_too_late()
    {
        var late = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 20) });
        var close = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 40) });
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(15) });

        Assert.Equal([(late, Pressure.Late), (close, Pressure.Tight)], _fair.Board.AtRisk.Select(entry => (entry.Number, _fair.Board.Pressure(entry))));
    }
}
