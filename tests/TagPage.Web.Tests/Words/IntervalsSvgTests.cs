using System.Globalization;
using System.Text.Encodings.Web;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TagPage.Core.Jobs;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public sealed class IntervalsSvgTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    [Fact]
    public void Bars_are_as_long_as_their_days_and_end_as_the_strings_did()
    {
        var svg = Draw(
            new("still in", Today.AddDays(-20), null, null),
            new("cut out", Today.AddDays(-60), Today.AddDays(-20), BedEnd.CutOut),
            new("broke", Today.AddDays(-80), Today.AddDays(-60), BedEnd.Wear),
            new("mishit", Today.AddDays(-100), Today.AddDays(-80), BedEnd.Mishit));

        var lengths = svg.QuerySelectorAll("path.bar").Select(Length).ToList();
        Assert.Equal(lengths[0], lengths[2], 0.2);
        Assert.Equal(2 * lengths[0], lengths[1], 0.2);
        Assert.Single(svg.QuerySelectorAll("path.wear"));
        Assert.Single(svg.QuerySelectorAll("path.cut"));
        Assert.Single(svg.QuerySelectorAll("circle.other"));
        Assert.Equal(["still in", "cut out", "broke", "mishit"], svg.QuerySelectorAll("text").Select(t => t.TextContent));
    }

    [Fact]
    public void Names_are_text_and_a_long_history_is_cut_at_the_newest()
    {
        var svg = Draw([.. Enumerable.Range(0, 60).Select(i => new IntervalsSvg.Bar($"<b>{i}", Today.AddDays(-60 + i), Today, BedEnd.Unknown))]);

        Assert.Equal(IntervalsSvg.MostBars, svg.QuerySelectorAll("path.bar").Length);
        Assert.Empty(svg.QuerySelectorAll("b"));
    }

    [Fact]
    public void Without_stringings_there_is_an_empty_picture() => Assert.Empty(Draw().Children);

    private static IElement Draw(params IntervalsSvg.Bar[] bars)
    {
        using var text = new StringWriter();
        IntervalsSvg.Draw(bars, Today, "words").WriteTo(text, HtmlEncoder.Default);
        return new HtmlParser().ParseDocument(text.ToString()).QuerySelector("svg")!;
    }

    private static double Length(IElement bar)
    {
        var x = bar.GetAttribute("d")!.TrimStart('M').Split('L').Select(p => double.Parse(p.Split(' ')[0], CultureInfo.InvariantCulture)).ToList();
        return x[1] - x[0];
    }
}
