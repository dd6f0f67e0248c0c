using TagPage.Core.EventDesk;
using TagPage.Records.Events;

namespace TagPage.Records.Tests.Events;

/// <summary>Bram is away, so the second of two rackets for half past ten was moved to eleven.</summary>
public sealed class ShiftStoreTests : IDisposable
{
    private readonly Fair _fair = new();
    private readonly int _second;

    public ShiftStoreTests()
    {
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        _second = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        Fair.Done(_fair.Technicians.SetAway(_fair.Helper, _fair.Id, _fair.Bram, true));
    }

    public void Dispose() => _fair.Dispose();

    [Fact]
    public void Owners_who_were_to_be_told_are_still_to_be_told_after_a_short_shift()
    {
        Shift(5);

        Assert.Equal([_second], _fair.Board.ToTell.Select(entry => entry.Number));
        Assert.Equal((Fair.At(10, 35), Fair.At(11, 5)), (_fair.Of(_second).MovedFrom, _fair.Of(_second).Promised));
        Assert.Equal(Pressure.Late, _fair.Board.Pressure(_fair.Of(_second)));
    }

    [Fact]
    public void Match_that_can_be_reached_after_the_shift_is_the_promise_again_and_nobody_is_told_of_a_move()
    {
        Shift(45);

        Assert.Equal(Fair.At(11, 15), _fair.Of(_second).Promised);
        Assert.Empty(_fair.Board.ToTell);
    }

    [Fact]
    public void Promise_whose_owner_was_told_is_not_left_after_a_match_that_can_be_reached()
    {
        Fair.Done(_fair.Moves.Told(_fair.Helper, _fair.Id, _second));

        Shift(45);

        Assert.Equal((Fair.At(11, 15), Fair.At(11, 15)), (_fair.Of(_second).NeededBy, _fair.Of(_second).Promised));
        Assert.Equal([Fair.At(11, 15), Fair.At(11, 15), Fair.At(11, 30)], [.. _fair.Board.Entries.Select(entry => entry.Promised!.Value), _fair.Of(_fair.TakeIn()).Promised]);
    }

    [Fact]
    public void Match_that_is_played_earlier_moves_the_promises_it_breaks_onto_the_list()
    {
        var third = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(12, 30) });

        Shift(-75);

        Assert.Equal((Fair.At(11, 15), Fair.At(11, 30)), (_fair.Of(third).MovedFrom, _fair.Of(third).Promised));
        Assert.Contains(third, _fair.Board.ToTell.Select(entry => entry.Number));
    }

    [Fact]
    public void Shift_of_more_than_three_hours_or_into_the_past_is_asked_about()
    {
        Assert.Empty(ShiftStore.Oddities(_fair.Board, 180));
        Assert.Equal(181, Assert.IsType<ShiftLong>(Assert.Single(ShiftStore.Oddities(_fair.Board, 181))).Minutes);
        Assert.Empty(ShiftStore.Oddities(_fair.Board, -30));
        Assert.Equal([1], Assert.IsType<ShiftIntoPast>(Assert.Single(ShiftStore.Oddities(_fair.Board, -31))).Numbers);
    }

    private void Shift(int minutes) => Fair.Done(_fair.Shifts.Shift(_fair.Helper, _fair.Id, minutes));
}
