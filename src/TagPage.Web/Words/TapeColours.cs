using TagPage.Core.Colour;

namespace TagPage.Web.Words;

/// <summary>Colours of label tape to offer, each with a patch to show beside its name. A shop may write any other.</summary>
public static class TapeColours
{
    private static readonly (string Name, Rgb Patch)[] Offered =
    [
        ("white", Rgb.White),
        ("yellow", Rgb.Parse("#F2C91D")),
        ("orange", Rgb.Parse("#E8791A")),
        ("red", Rgb.Parse("#C8352B")),
        ("pink", Rgb.Parse("#E88BB0")),
        ("purple", Rgb.Parse("#7A4FA3")),
        ("blue", Rgb.Parse("#2F6DB5")),
        ("green", Rgb.Parse("#3B9150")),
        ("silver", Rgb.Parse("#B9BEC2")),
        ("black", Rgb.Parse("#1A1A1A")),
    ];

    // The frame shows through clear tape, so it is worked out with the frame's colour.
    private static readonly (string Name, Rgb Patch)[] Clear =
    [
        ("clear on light", Rgb.Parse("#E4E1D8")),
        ("clear on dark", Rgb.Parse("#26282B")),
    ];

    /// <summary>Tapes that labels are printed on.</summary>
    public static IEnumerable<string> OfLabels => Offered.Concat(Clear).Select(o => o.Name);

    public static bool IsClear(string name) => Clear.Any(o => o.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    public static IEnumerable<string> Names => Offered.Select(o => o.Name);

    /// <summary>The patch for a colour as the shop wrote it, or null for one that is not on the list.</summary>
    public static Rgb? Patch(string name)
    {
        foreach (var offered in Offered.Concat(Clear))
            if (offered.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
                return offered.Patch;
        return null;
    }
}
