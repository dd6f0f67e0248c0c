using TagPage.Core.Units;

namespace TagPage.Records.Shop;

/// <summary>The shop itself as entered.</summary>
public sealed record ShopEntry
{
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public string? Street { get; init; }
    public string? Town { get; init; }
    public string? Country { get; init; }
    public string? OpeningHours { get; init; }
    public string Language { get; init; } = "en";
    public string? NamesIn { get; init; }
    public bool ByLastWord { get; init; }
    public string? TimeZone { get; init; }
    public string? Currency { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public int UnseenMonths { get; init; }
}
