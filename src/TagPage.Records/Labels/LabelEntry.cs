namespace TagPage.Records.Labels;

/// <summary>How to print a racket’s label, as entered.</summary>
public sealed record LabelEntry
{
    public LabelPurpose Purpose { get; init; }
    public string? TapeColour { get; init; }
    public string? InkColour { get; init; }
    public string? OwnLine { get; init; }
    public string? AgreedName { get; init; }
    public bool Whose { get; init; } = true;

    /// <summary>With the shop's logo, if it has one and there is room.</summary>
    public bool Logo { get; init; } = true;
    public bool Fold { get; init; }
    public int Copies { get; init; } = 1;
    public LabelPages Pages { get; init; }
    public int FirstFree { get; init; } = 1;
}
