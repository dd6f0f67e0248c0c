using TagPage.Core.Strings;

namespace TagPage.Records.Shop;

/// <summary>A care guide as entered.</summary>
public sealed record CareGuideEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Title { get; init; } = "";
    public string Name { get; init; } = "";

    /// <summary>Strings it is about; null for all.</summary>
    public Material? ForMaterial { get; init; }
    public string Markdown { get; init; } = "";
}
