using TagPage.Core.Forecast.Learning;
using TagPage.Core.Text;

namespace TagPage.Web.Words;

/// <summary>What was learned from a player's own strings, for the shop's pages.</summary>
public static class LearnedWords
{
    /// <summary>"Learned from 6 readings", "Estimate from typical values".</summary>
    public static string From(int readings) => readings switch
    {
        0 => "Estimate from typical values",
        1 => "Learned from 1 reading",
        _ => $"Learned from {readings} readings",
    };

    /// <summary>Settling and wear in words.</summary>
    public static string Loss(LossModel model) =>
        $"loses {Number(model.Settling)} % for every tenfold increase in time and {Number(model.PerHour, 2)} % for every hour played";

    /// <summary>"Broke after 12, 14 and 16.5 hours: one in five would break by 15.1 hours".</summary>
    /// <param name="brokeAfter">One or more, in hours.</param>
    /// <param name="cameOutWhole">How many came out before they broke.</param>
    /// <param name="hours">What follows from them; null with too few.</param>
    /// <param name="oneIn">One bed in so many.</param>
    public static string Breakage(IEnumerable<double> brokeAfter, int cameOutWhole, double? hours, double oneIn)
    {
        var (english, broke) = (Languages.English, Languages.English.List(brokeAfter.Order().Select(h => Number(h))));
        return hours is { } limit
            ? english.Sentence(english.Phrases.Reasons.BreakageWithoutPlay.Fill(("hours", broke), ("whole", BreakageWords.Whole(english, cameOutWhole)), ("n", Many(oneIn)), ("life", Number(limit))))
            : $"Broke after {broke} hours";
    }

    private static string Many(double oneIn) => oneIn switch
    {
        2 => "two",
        3 => "three",
        4 => "four",
        5 => "five",
        10 => "ten",
        _ => Number(oneIn),
    };

    private static string Number(double value, int decimals = 1) => Languages.English.Number(value, decimals);
}
