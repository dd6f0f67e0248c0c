using TagPage.Core.Sports;
using TagPage.Records.Events;

namespace TagPage.Records.Tests.Events;

public sealed class TechnicianStoreTests : IDisposable
{
    private readonly Fair _fair = new();

    public void Dispose() => _fair.Dispose();

    private DeskMoveStore Moves => _fair.Moves;

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
    public void Break_is_seen_while_it_runs_is_taken_once_however_often_it_is_pressed_and_ends_when_its_taker_is_back()
    {
        for (var press = 0; press < 2; press++)
            Fair.Done(_fair.Technicians.Pause(_fair.Helper, _fair.Id, _fair.Bram, 20));
        Assert.Equal((1, Fair.At(10, 20)), (_fair.Street.Records.Count("event_hours", "is_break = 1"), _fair.Board.OnBreakUntil(_fair.Board.Technician(_fair.Bram)!)));
        Assert.Null(_fair.Board.OnBreakUntil(_fair.Board.Technician(_fair.Runa)!));

        _fair.Wait(5);
        Fair.Done(_fair.Technicians.EndBreak(_fair.Helper, _fair.Id, _fair.Bram));

        Assert.Null(_fair.Board.OnBreakUntil(_fair.Board.Technician(_fair.Bram)!));
        var kept = _fair.TakeIn(but: entry => entry with { KeptFor = _fair.Bram });
        Assert.Equal(Fair.At(10, 35), _fair.Board.ReadyAt(_fair.Of(kept)));
        Fair.Done(_fair.Technicians.EndBreak(_fair.Helper, _fair.Id, _fair.Bram));
        Assert.Equal(1, _fair.Street.Records.Count("event_hours", "is_break = 1 AND to_at = '2026-11-25 10:05'"));
    }

    [Fact]
    public void Break_that_ends_in_the_minute_it_began_was_none()
    {
        Fair.Done(_fair.Technicians.Pause(_fair.Helper, _fair.Id, _fair.Bram, 20));
        Fair.Done(_fair.Technicians.EndBreak(_fair.Helper, _fair.Id, _fair.Bram));

        Assert.Equal(0, _fair.Street.Records.Count("event_hours", "is_break = 1"));
    }

    [Fact]
    public void Lunch_can_end_early_too_and_the_next_day_begins_as_it_did()
    {
        _fair.Wait(190);
        Assert.Equal(Fair.At(14), _fair.Board.OnBreakUntil(_fair.Board.Technician(_fair.Runa)!));

        Fair.Done(_fair.Technicians.EndBreak(_fair.Helper, _fair.Id, _fair.Runa));

        Assert.Null(_fair.Board.OnBreakUntil(_fair.Board.Technician(_fair.Runa)!));
        Assert.Equal([(9, 0), (13, 10)], _fair.Board.Technician(_fair.Runa)!.Hours.Select(time => (time.From.Hour, time.From.Minute)));
    }

    [Fact]
    public void Racket_whose_technician_is_on_a_break_is_ready_after_it_even_when_it_is_overdue()
    {
        var number = _fair.TakeIn();
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Bram));
        _fair.Wait(40);

        Fair.Done(_fair.Technicians.Pause(_fair.Helper, _fair.Id, _fair.Bram, 20));

        Assert.Equal(Fair.At(11), _fair.Board.ReadyAt(_fair.Of(number)));
    }
}
