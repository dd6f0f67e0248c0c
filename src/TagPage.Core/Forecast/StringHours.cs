using TagPage.Core.Strings;

namespace TagPage.Core.Forecast;

/// <summary>
/// Hours a bed lasts: base hours of sport and material × (diameter / reference diameter)² × hitting × pattern;
/// a hybrid takes the shorter of its two. A model assumption of this project, not published.
/// </summary>
internal static class StringHours
{
    public static double Of(Bed bed, ForecastInput input, StartingValues values) =>
        Math.Min(Of(bed.Mains, input, values), Of(bed.Crosses, input, values));

    private static double Of(BedString part, ForecastInput input, StartingValues values)
    {
        var sport = values.Of(input.Sport);
        return sport.Of(part.Material).LifeHours
            * GaugeFactor(part, sport)
            * values.Hitting.Of(input.Play.Hitting)
            * (input.Mains >= sport.ManyMains ? sport.ManyMainsFactor : 1);
    }

    private static double GaugeFactor(BedString part, SportValues sport)
    {
        if (part.GaugeMm is not { } gauge)
            return 1;
        var sane = (double)Math.Clamp(gauge, BedString.MinGaugeMm, BedString.MaxGaugeMm);
        return Math.Pow(sane / sport.ReferenceGaugeMm, 2);
    }
}
