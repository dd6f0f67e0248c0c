namespace TagPage.Labels.Text;

/// <summary>The bundled fonts. Their licence stands beside them, in Fonts/OFL.txt.</summary>
public static class LabelFonts
{
    private static readonly Lazy<LabelFont> Latin = new(() => new LabelFont("RobotoCondensed"));

    // The large ones are loaded only when a name asks for them.
    private static readonly Lazy<LabelFont>[] Order =
    [
        Latin,
        new(() => new LabelFont("NotoSansHebrew")),
        new(() => new LabelFont("NotoSansArabic")),
        new(() => new LabelFont("NotoSansJP-names")),
        new(() => new LabelFont("NotoSansSC-names")),
    ];

    /// <summary>The font for a character: the one in use where it has it, else the first that does, else null.</summary>
    internal static LabelFont? For(int codePoint, LabelFont? inUse)
    {
        if (Latin.Value.Has(codePoint))
            return Latin.Value;
        if (inUse is not null && inUse.Has(codePoint))
            return inUse;
        return Order.Select(font => font.Value).FirstOrDefault(font => font.Has(codePoint));
    }
}
