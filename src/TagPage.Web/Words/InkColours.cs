using TagPage.Core.Colour;
using TagPage.Labels.Geometry;

namespace TagPage.Web.Words;

/// <summary>Inks that label printers have, each with the colour it is worked out with.</summary>
public static class InkColours
{
    private static readonly (string Name, Rgb Patch)[] Offered =
    [
        ("black", Rgb.Black),
        ("blue", Rgb.Parse("#1D3F8F")),
        ("red", Rgb.Parse("#B3261E")),
        ("gold", Rgb.Parse("#B08D2E")),
        ("white", Rgb.White),
    ];

    public static IEnumerable<string> Names => Offered.Select(o => o.Name);

    /// <summary>The usual ink where it can be read on a tape, else black or white, whichever is read better.</summary>
    public static Rgb Following(Rgb tape, string usual) =>
        new Tape(12, tape, Patch(usual)).IsReadable ? Patch(usual) : Contrast.TextOn(tape, Rgb.White, Rgb.Black);

    /// <summary>The colour of an ink, black for one that is not on the list.</summary>
    public static Rgb Patch(string name) => Offered.FirstOrDefault(o => o.Name.Equals(name, StringComparison.OrdinalIgnoreCase)).Patch;
}
