using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast;

/// <summary>A racket to vary: polyester of reference diameter, strung on 2 March 2026, played 3 × 1.5 h a week.</summary>
internal static class Case
{
    public static readonly DateOnly Strung = new(2026, 3, 2);

    public static readonly ForecastInput Racket = new()
    {
        Sport = Sport.Tennis,
        Racket = RacketState.InTurn,
        Play = new Play(3, 1.5m, Hitting.Average),
        Share = 1,
        Bed = Of(Material.Polyester, 1.30m),
        Mains = 16,
        StrungOn = Strung,
    };

    public static Bed Of(Material material, decimal? gaugeMm) => Bed.Of(new BedString(material, gaugeMm));

    public static RestringBy On(this ForecastInput input, DateOnly today) =>
        RestringForecast.Work(input, today, StartingValues.Default);

    public static RestringBy AfterDays(this ForecastInput input, int days) => input.On(Strung.AddDays(days));

    public static T Limit<T>(this RestringBy forecast) where T : LimitDay => forecast.Limits.OfType<T>().Single();
}
