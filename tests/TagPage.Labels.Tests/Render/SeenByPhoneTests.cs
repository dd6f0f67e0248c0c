using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Render;

/// <summary>The square as a phone sees it, read by ZXing.Net: each tape and resolution not refused.</summary>
public class SeenByPhoneTests
{
    private const string Address = "HTTPS://TAG.EXAMPLE/T/7K2M9Q4TXAV";

    private static readonly Lazy<IReadOnlyList<(Bitmap Label, int DotsPerModule)>> Labels = new(() =>
        [.. Samples.StocksWithSquare.Select(stock => Samples.Lay(Samples.Of("return"), stock)).Select(label => (Rasters.OfPng(label), label.Square!.DotsPerModule))]);

    // A phone sees about five pixels a module from 15 cm (common practice). One square after the other is seen turned by
    // up to 15°, at a slant, out of focus and with noise; the rate goes to the test's output.
    [Theory]
    [InlineData("blurred", 0, 0, 1.6, 0)]
    [InlineData("turned by 15°", 15, 0, 0.8, 8)]
    [InlineData("turned by −15°", -15, 0, 0.8, 8)]
    [InlineData("at a slant", 5, 0.35, 0.8, 8)]
    [InlineData("noisy", -5, 0, 0.8, 40)]
    [InlineData("all at once", 15, 0.25, 1.2, 25)]
    public void Nearly_every_square_is_read_as_a_phone_sees_it(string how, double degrees, double slant, double blur, double noise)
    {
        var (read, seen) = (0, 0);
        foreach (var (label, dotsPerModule) in Labels.Value)
        {
            for (var seed = 1; seed <= 3; seed++)
            {
                var picture = new Camera(degrees + seed - 2, slant, blur, noise, seed).See(label, 5.0 / dotsPerModule);
                seen++;
                read += Scanner.Look(picture) == Address ? 1 : 0;
            }
        }
        TestContext.Current.TestOutputHelper!.WriteLine($"{how}: {read} of {seen} read");
        Assert.True(read >= 0.95 * seen, $"{how}: {read} of {seen} read");
    }

    [Fact]
    public void A_camera_that_sees_next_to_nothing_reads_nothing()
    {
        var label = Samples.Lay(Samples.Of("return"), Samples.Stock(12, 180));
        Assert.Null(Scanner.Look(new Camera(0, 0, 12, 0, 1).See(Rasters.OfPng(label), 2.5)));
    }
}
