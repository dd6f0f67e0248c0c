using TagPage.Labels.Layout;

namespace TagPage.Labels.Printing;

/// <summary>One page on its way to a printer; all lengths in mm from its upper left corner.</summary>
public sealed record PrintPage(double WidthMm, double HeightMm, IReadOnlyList<PlacedLabel> Labels)
{
    /// <summary>Filled boxes: cut marks, rulers.</summary>
    public IReadOnlyList<Mark> Marks { get; init; } = [];
}

/// <summary>A label and where its upper left corner lies.</summary>
public sealed record PlacedLabel(LaidLabel Label, double XMm, double YMm);

/// <summary>A filled box.</summary>
public sealed record Mark(double XMm, double YMm, double WidthMm, double HeightMm);
