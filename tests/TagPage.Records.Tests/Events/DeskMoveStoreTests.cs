using TagPage.Core.Jobs;
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
}
