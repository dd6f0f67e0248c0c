using TagPage.Core.EventDesk;
using TagPage.Records.Events;

namespace TagPage.Records.Tests.Events;

/// <summary>What the desk flags.</summary>
public sealed class DeskRiskTests : IDisposable
{
    private readonly Fair _fair = new();

    public void Dispose() => _fair.Dispose();

    private DeskMoveStore Moves => _fair.Moves;

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
