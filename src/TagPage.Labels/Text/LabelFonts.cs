namespace TagPage.Labels.Text;

/// <summary>The bundled fonts. Their licence stands beside them, in Fonts/OFL.txt.</summary>
public static class LabelFonts
{
    private static readonly Lazy<LabelFont> Plain = new(() => new LabelFont("RobotoCondensed")
    {
        IsFitted = true,
        Sturdy = new LabelFont("RobotoCondensed-Medium") { IsFitted = true },
    });

    private static readonly Lazy<LabelFont> Bold = new(() => new LabelFont("RobotoCondensed-ExtraBold") { IsFitted = true });

    // One weight for both; the large ones are loaded only when a name asks for them.
    private static readonly Lazy<LabelFont>[] Others =
    [
        new(() => new LabelFont("NotoSansHebrew")),
        new(() => new LabelFont("NotoSansArabic")),
        new(() => new LabelFont("NotoSansJP-names")),
        new(() => new LabelFont("NotoSansSC-names")),
    ];

    /// <summary>The font for a character: the one in use where it has it, else the first that does, else null.</summary>
    internal static LabelFont? For(int codePoint, LabelFont? inUse, bool isBold)
    {
        var latin = (isBold ? Bold : Plain).Value;
        if (latin.Has(codePoint))
            return latin;
        if (inUse is not null && inUse.Has(codePoint))
            return inUse;
        return Others.Select(font => font.Value).FirstOrDefault(font => font.Has(codePoint));
    }
}
