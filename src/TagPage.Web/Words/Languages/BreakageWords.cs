using TagPage.Core.Forecast;
using TagPage.Core.Text;

namespace TagPage.Web.Words;

/// <summary>How the breakage limit's day came about; for private pages only.</summary>
internal static class BreakageWords
{
    public static string Of(Language language, BreakageLimit limit)
    {
        var words = language.Phrases.Reasons;
        var phrase = limit.Hours is null ? words.FewBreaks : limit.Interval is null ? words.BreakageWithoutPlay : words.Breakage;
        return phrase.Fill(
            ("hours", language.List(limit.BrokeAfter.Select(hours => language.Number(hours, 1)))),
            ("whole", Whole(language, limit.CameOutWhole)),
            ("n", language.Number(limit.OneIn, 1)),
            ("life", language.Number(limit.Hours ?? 0, 1)),
            ("days", language.Days(limit.Interval ?? 0)));
    }

    /// <summary>What is added where beds came out before they broke.</summary>
    public static string Whole(Language language, int beds) => beds == 0 ? "" : language.Count(language.Phrases.Reasons.CameOutWhole, beds);
}
