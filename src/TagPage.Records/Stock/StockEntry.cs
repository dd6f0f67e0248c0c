using TagPage.Core.Strings;

namespace TagPage.Records.Stock;

/// <summary>How account is kept of a string.</summary>
public sealed record StockEntry
{
    /// <summary>0 to begin.</summary>
    public int Version { get; init; }

    public StockUnit Unit { get; init; }

    /// <summary>In centimetres, 100 to 5,000.</summary>
    public int RacketCm { get; init; }

    /// <summary>In centimetres, 0 or more.</summary>
    public int ReorderCm { get; init; }
}

/// <summary>Strings that came in.</summary>
public sealed record BoughtEntry
{
    public string FormKey { get; init; } = "";

    /// <summary>Above zero.</summary>
    public int Centimetres { get; init; }

    /// <summary>For all of it, in minor units; null where it is not known.</summary>
    public long? CostMinor { get; init; }

    public string? Note { get; init; }
}

/// <summary>What was found by counting.</summary>
public sealed record CountEntry
{
    public string FormKey { get; init; } = "";

    /// <summary>0 or more.</summary>
    public int Centimetres { get; init; }

    public string? Note { get; init; }
}
