namespace TagPage.Labels.Printing;

/// <summary>A sheet of paper, upright.</summary>
/// <param name="Name">As it is sold.</param>
/// <param name="WidthMm">Its short side.</param>
/// <param name="HeightMm">Its long side.</param>
public sealed record Paper(string Name, double WidthMm, double HeightMm)
{
    /// <summary>210 × 297 mm (ISO 216).</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>8.5 × 11 in (ANSI/ASME Y14.1).</summary>
    public static Paper Letter { get; } = new("Letter", 215.9, 279.4);
}
