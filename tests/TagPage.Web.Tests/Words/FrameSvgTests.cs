using System.Text.RegularExpressions;
using TagPage.Core.Customising;
using TagPage.Core.Sports;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public class FrameSvgTests
{
    [Fact]
    public void Labels_at_butt_and_tip_stay_within_the_picture()
    {
        FrameDrawing.Row[] rows = [new("Butt cap", 0, 0) { RoundedG = 2.5 }, new("Throat", 35, 0) { RoundedG = 1 }, new("Twelve o’clock", 67.5, 0) { RoundedG = 12.5 }];
        using var svg = new StringWriter();

        FrameSvg.Draw(new FrameDrawing(Sport.Tennis, 68.5, 32, 32.2, rows, new SpecWords(new CustomisingValues(), Sport.Tennis))).WriteTo(svg, System.Text.Encodings.Web.HtmlEncoder.Default);

        Assert.Equal(["start", "middle", "end"], Regex.Matches(svg.ToString(), "text-anchor=\"([a-z]+)\">[0-9.]+ g").Select(label => label.Groups[1].Value));
    }
}
