namespace TagPage.Core.Colour;

/// <summary>An accent colour as a page can use it, for text and lines as well as for surfaces.</summary>
/// <param name="Colour">Keeps 4.5:1 on every ground it was made for.</param>
/// <param name="Text">What is written on it, with 4.5:1.</param>
public readonly record struct Accent(Rgb Colour, Rgb Text)
{
    private const int Steps = 50;

    /// <summary>
    /// The colour asked for if it can be read on the grounds, otherwise the nearest one towards black (on light grounds)
    /// or white (on dark ones) that can. Grounds of one page are close to each other.
    /// </summary>
    /// <param name="wish">The colour asked for.</param>
    /// <param name="grounds">What it is written and drawn on.</param>
    /// <param name="light">The page's own light text.</param>
    /// <param name="dark">The page's own dark text.</param>
    public static Accent On(Rgb wish, IReadOnlyList<Rgb> grounds, Rgb light, Rgb dark)
    {
        var end = Contrast.TextOn(grounds[0], Rgb.White, Rgb.Black);
        var colour = Enumerable.Range(0, Steps + 1)
            .Select(step => Mix(wish, end, step))
            .First(mixed => mixed == end || grounds.All(ground => Contrast.Ratio(mixed, ground) >= Contrast.Text));
        return new Accent(colour, Contrast.TextOn(colour, light, dark));
    }

    private static Rgb Mix(Rgb from, Rgb to, int step)
    {
        return new Rgb(Part(from.Red, to.Red), Part(from.Green, to.Green), Part(from.Blue, to.Blue));

        byte Part(byte a, byte b) => (byte)Math.Round(a + (b - a) * (double)step / Steps);
    }
}
