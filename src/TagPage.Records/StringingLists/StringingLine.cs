using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Core.Units;

namespace TagPage.Records.StringingLists;

/// <summary>A line of a list, read, decided and ready to be written.</summary>
public sealed record StringingLine
{
    /// <summary>Where it stands in the list.</summary>
    public int Line { get; init; }

    /// <summary>The same for all lines of one client.</summary>
    public int Household { get; init; }

    /// <summary>Of a client on file; null for a new one.</summary>
    public long? ClientId { get; init; }

    public string Client { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public string Player { get; init; } = "";
    public bool Junior { get; init; }

    /// <summary>Of a racket on file; null for a new one.</summary>
    public long? RacketId { get; init; }

    /// <summary>Tells new rackets of a household apart.</summary>
    public string RacketKey { get; init; } = "";

    public string Frame { get; init; } = "";
    public string TapeColour { get; init; } = "";

    /// <summary>As the list says it; null for the next that is free.</summary>
    public int? Number { get; init; }

    public Sport Sport { get; init; }
    public ListString Mains { get; init; } = new();
    public ListString Crosses { get; init; } = new();
    public decimal MainsTension { get; init; }
    public decimal CrossesTension { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public DateOnly StrungOn { get; init; }
    public string StrungBy { get; init; } = "";

    /// <summary>Null for the next that is free.</summary>
    public int? Ticket { get; init; }

    public long? PriceMinor { get; init; }

    /// <summary>Strung so long ago that it counts as collected and paid.</summary>
    public bool IsSettled { get; init; }

    public string Note { get; init; } = "";
}

/// <summary>A string by name and gauge, as the catalogue has it or is to have it.</summary>
public sealed record ListString
{
    public string Name { get; init; } = "";
    public Material Material { get; init; }
    public decimal GaugeMm { get; init; }
}
