namespace TagPage.Records.Shop;

/// <summary>The shop's own page as entered.</summary>
public sealed record HomePageEntry
{
    public int Version { get; init; }
    public string? HomeMarkdown { get; init; }

    /// <summary>#RRGGBB; null for the product's own.</summary>
    public string? Accent { get; init; }
}
