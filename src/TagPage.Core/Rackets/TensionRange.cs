using TagPage.Core.Units;

namespace TagPage.Core.Rackets;

/// <summary>The tensions a frame's maker recommends, as printed on it; an open end is null.</summary>
/// <param name="Least">The lowest, both ends included.</param>
/// <param name="Most">The highest.</param>
/// <param name="Unit">Of both.</param>
public readonly record struct TensionRange(decimal? Least, decimal? Most, TensionUnit Unit)
{
    /// <summary>Whether anything is recommended.</summary>
    public bool IsKnown => (Least ?? Most) is not null;

    /// <summary>Whether a tension lies within; makers print two units rounded, so half a machine's step of the tension's own unit is allowed.</summary>
    public bool Holds(Tension tension)
    {
        var slack = (tension.Unit == Unit ? 0 : tension.Unit == TensionUnit.Lb ? Tension.StepLb : Tension.StepKg) / 2;
        return !(tension.Value < In(Least, tension.Unit) - slack) && !(tension.Value > In(Most, tension.Unit) + slack);
    }

    /// <summary>Whether a tension lies above: it can crack the frame.</summary>
    public bool IsExceededBy(Tension tension) => !Holds(tension) && tension.Value > In(Most, tension.Unit);

    private decimal? In(decimal? value, TensionUnit unit) => value is { } known ? new Tension(known, Unit).In(unit) : null;
}
