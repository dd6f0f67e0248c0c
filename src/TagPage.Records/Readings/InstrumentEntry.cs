using TagPage.Core.Strings;

namespace TagPage.Records.Readings;

/// <summary>An instrument as entered.</summary>
public sealed record InstrumentEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public ReadingScale Scale { get; init; }
}
