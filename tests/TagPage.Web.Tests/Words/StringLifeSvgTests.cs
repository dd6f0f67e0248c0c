using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public sealed partial class StringLifeSvgTests
{
    [Theory]
    [InlineData(16, 1, 16, 0)]
    [InlineData(16, .5, 8, 8)]
    [InlineData(18, .01, 1, 17)]
    [InlineData(22, 0, 0, 22)]
    [InlineData(1, 1, 1, 0)]
    [InlineData(60, .5, 30, 30)]
    public void Every_main_is_one_stroke_good_or_used(int mains, double left, int good, int used)
    {
        var svg = Draw(mains, left);

        Assert.Equal(good, Strokes(svg, ".good").Count);
        Assert.Equal(used, Strokes(svg, ".used").Count);
    }

    [Fact]
    public void Good_strokes_stand_in_the_middle_and_used_ones_outside()
    {
        var svg = Draw(16, .5);

        var good = Strokes(svg, ".good");
        Assert.All(Strokes(svg, ".used"), used => Assert.True(used < good.Min() || used > good.Max()));
    }

    [Fact]
    public void Every_stroke_lies_within_the_drawing() =>
        Assert.All(Enumerable.Range(1, 60), mains => Assert.All(Strokes(Draw(mains, 1), ".good"), x => Assert.InRange(x, 0, 320)));

    [Fact]
    public void Hoop_without_strings_has_none() => Assert.Empty(Draw(16, null).QuerySelectorAll("path"));

    [Fact]
    public void It_says_in_words_what_it_shows()
    {
        var svg = Draw(16, .3, "about a third \"left\" <b>");

        Assert.Equal("img", svg.GetAttribute("role"));
        Assert.Equal("about a third \"left\" <b>", svg.GetAttribute("aria-label"));
    }

    private static IElement Draw(int mains, double? left, string words = "words")
    {
        using var text = new StringWriter();
        StringLifeSvg.Draw(mains, left, words).WriteTo(text, HtmlEncoder.Default);
        return new HtmlParser().ParseDocument(text.ToString()).QuerySelector("svg")!;
    }

    /// <summary>Where the strokes of one kind are.</summary>
    private static List<double> Strokes(IElement svg, string kind) =>
        [.. Starts().Matches(svg.QuerySelector(kind)?.GetAttribute("d") ?? "").Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"M([\d.]+) ")]
    private static partial Regex Starts();
}
