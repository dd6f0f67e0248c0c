using CsCheck;
using TagPage.Core.Colour;

namespace TagPage.Core.Tests.Colour;

public class AccentTests
{
    private static readonly Rgb[] Light = [Rgb.Parse("#FBFAF6"), Rgb.White];
    private static readonly Rgb[] Dark = [Rgb.Parse("#141816"), Rgb.Parse("#1C2220")];

    // WCAG 2.2, success criterion 1.4.3.
    [Fact]
    public void Any_wish_can_be_read_on_the_grounds_and_written_on() =>
        Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte).Select((r, g, b) => new Rgb(r, g, b)).Sample(wish =>
        {
            foreach (var grounds in new[] { Light, Dark })
            {
                var accent = On(wish, grounds);
                Assert.All(grounds, ground => Assert.True(Contrast.Ratio(accent.Colour, ground) >= 4.5));
                Assert.True(Contrast.Ratio(accent.Colour, accent.Text) >= 4.5);
            }
        });

    [Theory]
    [InlineData("#1E5B49")]
    [InlineData("#000000")]
    [InlineData("#0000FF")]
    public void Wish_that_can_be_read_is_kept(string wish) => Assert.Equal(Rgb.Parse(wish), On(Rgb.Parse(wish), Light).Colour);

    [Fact]
    public void Wish_that_cannot_is_moved_no_further_than_needed()
    {
        var yellow = On(Rgb.Parse("#F2C91D"), Light).Colour;

        Assert.InRange(Contrast.Ratio(yellow, Light[0]), 4.5, 4.9);
        Assert.True(yellow.Red > yellow.Green && yellow.Green > yellow.Blue);
    }

    private static Accent On(Rgb wish, Rgb[] grounds) => Accent.On(wish, grounds, Rgb.White, Rgb.Parse("#17211D"));
}
