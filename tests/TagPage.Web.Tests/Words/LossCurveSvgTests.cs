using System.Globalization;
using System.Text.Encodings.Web;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public sealed class LossCurveSvgTests
{
    private static readonly DateOnly Strung = new(2026, 10, 1);
    private static readonly DateOnly Today = Strung.AddDays(20);

    [Fact]
    public void Expected_line_crosses_the_threshold_on_the_due_day()
    {
        var picture = Picture();
        var svg = Draw(picture);

        var due = X(svg.QuerySelector("path.due")!);
        var threshold = Ends(svg.QuerySelector("path.threshold")!)[0].Y;
        var line = Ends(svg.QuerySelector("path.expected")!);
        Assert.True(line.Last(p => p.X < due - 1).Y < threshold);
        Assert.True(line.First(p => p.X > due + 1).Y > threshold);
    }

    [Fact]
    public void Line_lies_inside_its_range_and_falls_with_the_days()
    {
        var svg = Draw(Picture());
        var line = Ends(svg.QuerySelector("path.expected")!);
        var band = Ends(svg.QuerySelector("path.range")!);
        var (less, more) = (band[..line.Count], band[line.Count..].AsEnumerable().Reverse().ToList());

        Assert.Equal(2 * line.Count, band.Count);
        for (var i = 0; i < line.Count; i++)
        {
            Assert.InRange(line[i].Y, less[i].Y, more[i].Y);
            Assert.True(i == 0 || line[i].Y >= line[i - 1].Y);
        }
    }

    [Fact]
    public void Reading_at_the_threshold_is_a_dot_on_it_and_one_without_loss_lies_on_top()
    {
        var picture = Picture();
        var svg = Draw(picture with { Readings = [(Today, picture.Curve.Threshold), (Strung, 0)] });

        var dots = svg.QuerySelectorAll("circle").Select(c => (X: Number(c, "cx"), Y: Number(c, "cy"))).ToList();
        Assert.Equal(Ends(svg.QuerySelector("path.threshold")!)[0].Y, dots[0].Y);
        Assert.Equal(X(svg.QuerySelector("path.today")!), dots[0].X);
        Assert.Equal(Ends(svg.QuerySelector("path.grid")!)[0].Y, dots[1].Y);
    }

    [Theory]
    [InlineData(-30)]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(99)]
    [InlineData(300)]
    public void Whatever_was_read_the_drawing_stays_within_its_frame(double loss)
    {
        var svg = Draw(Picture() with { Readings = [(Strung.AddDays(-3), loss), (Today, loss), (Today.AddYears(3), loss)] });

        Assert.All(svg.QuerySelectorAll("path").SelectMany(Ends), p => AssertInside(p.X, p.Y));
        Assert.All(svg.QuerySelectorAll("circle"), c => AssertInside(Number(c, "cx"), Number(c, "cy")));
        Assert.All(svg.QuerySelectorAll("text"), t => AssertInside(Number(t, "x"), Number(t, "y")));
    }

    [Fact]
    public void It_says_in_words_what_it_shows_and_the_table_has_the_same_days()
    {
        var picture = Picture() with { Readings = [(Today.AddDays(-6), 11)] };
        var svg = Draw(picture, "down <b> & \"out\"");

        Assert.Equal("down <b> & \"out\"", svg.GetAttribute("aria-label"));
        Assert.Equal("img", svg.GetAttribute("role"));
        Assert.Contains(picture.Rows, row => row.Day == Today);
        Assert.Contains(picture.Rows, row => row.Day == picture.Due);
        Assert.Equal(11, picture.MeasuredOn(picture.Rows.Single(row => row.Day == Today.AddDays(-6)).Day));
        Assert.Null(picture.MeasuredOn(Today));
        Assert.Equal(picture.Rows.Select(r => r.Day).Distinct().Order(), picture.Rows.Select(r => r.Day));
    }

    [Fact]
    public void Limit_that_is_reached_today_is_not_told_of_another_day()
    {
        var picture = Picture() with { Today = Strung.AddDays(30) };
        Assert.All(Languages.All, language =>
        {
            var said = new TagWords(language).Loss(picture);
            Assert.DoesNotContain(language.Day(picture.Today), said, StringComparison.Ordinal);
            Assert.NotEqual(new TagWords(language).Loss(picture with { Today = Strung.AddDays(31) }), said);
        });
    }

    /// <summary>Polyester, 4.5 hours a week, no reading: due after 30 days.</summary>
    private static LossPicture Picture()
    {
        var input = new ForecastInput
        {
            Sport = Sport.Tennis,
            Racket = RacketState.InTurn,
            Play = new Play(3, 1.5m, Hitting.Average),
            Share = 1,
            Bed = new Bed(new BedString(Material.Polyester, 1.25m), new BedString(Material.Polyester, 1.25m)),
            StrungOn = Strung,
        };
        var typical = StartingValues.Default.Tension;
        var model = LossModel.Of(typical.Of(Material.Polyester), typical.Spread, []);
        var curve = new LossCurve(model, HoursPlayed.Of(input, Strung, Today), typical.Of(Material.Polyester).Threshold);
        Assert.Equal(Strung.AddDays(30), curve.Reaches());
        return new LossPicture(curve, Today, curve.Reaches(), []);
    }

    private static IElement Draw(LossPicture picture, string says = "words")
    {
        using var text = new StringWriter();
        LossCurveSvg.Draw(picture, new LossPictureWords(says, "today", "31 Oct", "restring here")).WriteTo(text, HtmlEncoder.Default);
        return new HtmlParser().ParseDocument(text.ToString()).QuerySelector("svg")!;
    }

    private static void AssertInside(double x, double y)
    {
        Assert.InRange(x, 0, 360);
        Assert.InRange(y, 0, 216);
    }

    private static double X(IElement path) => Ends(path)[0].X;

    private static List<(double X, double Y)> Ends(IElement path) =>
    [
        .. path.GetAttribute("d")!.TrimStart('M').TrimEnd('Z').Split('L').Select(pair => pair.Split(' '))
            .Select(pair => (double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture))),
    ];

    private static double Number(IElement element, string attribute) => double.Parse(element.GetAttribute(attribute)!, CultureInfo.InvariantCulture);
}
