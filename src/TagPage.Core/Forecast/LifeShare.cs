namespace TagPage.Core.Forecast;

/// <summary>What is left of the string life, to the nearest common fraction.</summary>
public enum LifeShare { None, HardlyAny, Tenth, Quarter, Third, Half, TwoThirds, ThreeQuarters, NearlyAll, All }

/// <summary>Finds the common fraction for a share.</summary>
public static class LifeShares
{
    private static readonly (double Left, LifeShare Share)[] Fractions =
    [
        (0.03, LifeShare.HardlyAny),
        (0.1, LifeShare.Tenth),
        (0.25, LifeShare.Quarter),
        (1.0 / 3, LifeShare.Third),
        (0.5, LifeShare.Half),
        (2.0 / 3, LifeShare.TwoThirds),
        (0.75, LifeShare.ThreeQuarters),
        (0.95, LifeShare.NearlyAll),
    ];

    /// <param name="lifeLeft">0 to 1; what lies outside counts as the nearer end.</param>
    public static LifeShare Of(double lifeLeft) => lifeLeft switch
    {
        >= 1 => LifeShare.All,
        > 0 => Fractions.MinBy(fraction => Math.Abs(fraction.Left - lifeLeft)).Share,
        _ => LifeShare.None,
    };
}
