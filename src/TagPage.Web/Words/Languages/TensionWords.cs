using TagPage.Core.Forecast;
using TagPage.Core.Text;

namespace TagPage.Web.Words;

/// <summary>How the tension limit's day came about; for private pages only.</summary>
internal static class TensionWords
{
    public static string Of(Language language, TensionLimit limit)
    {
        var words = language.Phrases.Reasons;
        if (limit.Curve is not { } curve)
            return limit.HoursAWeek > 0 ? words.StringsUnknown : words.NoHours;
        var phrase = limit.TakesOverTwoYears ? words.TensionOverTwoYears
            : curve.Model.Readings > 0 ? language.Count(words.TensionLearned, curve.Model.Readings)
            : words.TensionTypical;
        return phrase.Fill(
            ("loss", language.Number(curve.Threshold)), ("week", language.Number(limit.HoursAWeek)), ("days", language.Days(limit.Interval ?? 0)));
    }
}
