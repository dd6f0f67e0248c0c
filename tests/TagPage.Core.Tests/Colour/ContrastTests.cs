using CsCheck;
using TagPage.Core.Colour;

namespace TagPage.Core.Tests.Colour;

public class ContrastTests
{
    // Formula: WCAG 2.2, "contrast ratio"; values recomputed independently with NumPy.
    [Theory]
    [InlineData("#767676", 4.542225)]
    [InlineData("#777777", 4.478089)]
    [InlineData("#595959", 7.004729)]
    [InlineData("#FF0000", 3.998477)]
    [InlineData("#0000ff", 8.592471)]
    [InlineData("#000000", 21)]
    [InlineData("#FFFFFF", 1)]
    public void The_ratio_to_white_is_that_of_the_formula(string colour, double expected)
    {
        Assert.Equal(expected, Contrast.Ratio(Rgb.Parse(colour), Rgb.White), 6);
        Assert.Equal(expected, Contrast.Ratio(Rgb.White, Rgb.Parse(colour)), 6);
    }

    [Fact]
    public void The_text_on_any_accent_can_be_read() =>
        Gen.Select(Colours, Colours, Colours).Sample((accent, light, dark) =>
            Contrast.Ratio(accent, Contrast.TextOn(accent, light, dark)) >= Contrast.Text);

    [Fact]
    public void The_pages_own_ink_and_paper_are_used_where_they_will_do()
    {
        var (paper, ink) = (Rgb.Parse("#FBFAF6"), Rgb.Parse("#1B1D1F"));
        Assert.Equal(paper, Contrast.TextOn(Rgb.Parse("#1E5B49"), paper, ink));
        Assert.Equal(ink, Contrast.TextOn(Rgb.Parse("#7CC7AC"), paper, ink));
        Assert.Equal(Rgb.White, Contrast.TextOn(Rgb.Parse("#757575"), paper, ink));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("1E5B49")]
    [InlineData("#1E5B4")]
    [InlineData("#1E5B4G")]
    [InlineData("#-1E5B4")]
    [InlineData("# 1E5B4")]
    [InlineData("#1E5B49;}")]
    public void What_is_not_a_colour_is_not_read(string? text) => Assert.False(Rgb.TryParse(text, out _));

    [Fact]
    public void A_colour_is_written_as_it_is_read() =>
        Colours.Sample(colour => Rgb.Parse(colour.ToString()) == colour);

    private static readonly Gen<Rgb> Colours =
        Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte).Select((red, green, blue) => new Rgb(red, green, blue));
}
