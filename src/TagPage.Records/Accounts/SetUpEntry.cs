using TagPage.Core.Units;

namespace TagPage.Records.Accounts;

/// <summary>A new shop as entered.</summary>
public sealed record SetUpEntry
{
    public string ShopName { get; init; } = "";
    public string Name { get; init; } = "";
    public string Password { get; init; } = "";
    public string Country { get; init; } = "";
    public string TimeZone { get; init; } = "";
    public string Currency { get; init; } = "";
    public TensionUnit TensionUnit { get; init; }
}
