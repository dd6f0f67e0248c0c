namespace TagPage.Records.Labels;

/// <summary>How to print a racket’s label, as entered.</summary>
public sealed record LabelEntry
{
    public LabelPurpose Purpose { get; init; }

    /// <summary>Of the tape the label is printed on; empty for the shop's usual one.</summary>
    public string? TapeColour { get; init; }

    /// <summary>Width of the tape; null for the shop's usual one.</summary>
    public decimal? TapeMm { get; init; }

    /// <summary>The colour by which the racket is told from others, where this label is to set it.</summary>
    public string? RacketColour { get; init; }

    public string? InkColour { get; init; }
    public string? OwnLine { get; init; }
    public string? AgreedName { get; init; }
    public bool Whose { get; init; } = true;

    /// <summary>With the shop's mark, where it has one and there is room.</summary>
    public bool Logo { get; init; } = true;
    public bool Fold { get; init; }
    public int Copies { get; init; } = 1;
    public LabelPages Pages { get; init; }
    public int FirstFree { get; init; } = 1;
}
