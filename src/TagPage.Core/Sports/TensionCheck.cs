using TagPage.Core.Units;

namespace TagPage.Core.Sports;

/// <summary>How a tension looks for its sport.</summary>
public enum TensionVerdict
{
    /// <summary>Inside the sport's usual range.</summary>
    Usual,

    /// <summary>Possible, but outside the usual range: ask before it is saved.</summary>
    Unusual,

    /// <summary>Nothing a stringing machine pulls: refuse it.</summary>
    Impossible,
}

/// <summary>Tells a typo from a real wish. Over-tension can crack a frame, so unusual values are asked about.</summary>
public static class TensionCheck
{
    /// <summary>Lowest tension that can be saved, in lb. Common practice, no source.</summary>
    public const decimal MinLb = 5;

    /// <summary>Highest tension that can be saved, in lb. Common practice, no source.</summary>
    public const decimal MaxLb = 100;

    /// <summary>Judges a tension of any size, however absurd; ranges include both ends.</summary>
    public static TensionVerdict Of(Sport sport, Tension tension)
    {
        var facts = SportFacts.Of(sport);
        if (!IsWithin(tension, MinLb, MaxLb))
            return TensionVerdict.Impossible;
        return IsWithin(tension, facts.UsualMinLb, facts.UsualMaxLb) ? TensionVerdict.Usual : TensionVerdict.Unusual;
    }

    // The bounds are converted, not the value: a value of any size must not overflow.
    private static bool IsWithin(Tension tension, decimal minLb, decimal maxLb) =>
        tension.Value >= new Tension(minLb, TensionUnit.Lb).In(tension.Unit)
        && tension.Value <= new Tension(maxLb, TensionUnit.Lb).In(tension.Unit);
}
