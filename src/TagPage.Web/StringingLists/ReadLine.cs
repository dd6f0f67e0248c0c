using TagPage.Core.Sports;

namespace TagPage.Web.StringingLists;

/// <summary>A line of a list as it was read, before it is known what of it is on file.</summary>
public sealed record ReadLine
{
    public required int Line { get; init; }

    /// <summary>Why it cannot come in; null where it can.</summary>
    public string? Refused { get; init; }

    public string Client { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }

    /// <summary>The client where the list names none.</summary>
    public string Player { get; init; } = "";
    public bool IsPlayerNamed { get; init; }

    public string Frame { get; init; } = "";

    /// <summary>Its number or the colour of its tape, where the list says it.</summary>
    public string Marking { get; init; } = "";

    public Sport Sport { get; init; }

    /// <summary>By the line itself, not by one answer for the whole list.</summary>
    public bool IsSportNamed { get; init; }

    public DateOnly Day { get; init; }
    public StringText Mains { get; init; } = new("", null);
    public StringText Crosses { get; init; } = new("", null);

    /// <summary>With its unit; null where it is not known.</summary>
    public TensionReading? Tension { get; init; }

    public long? PriceMinor { get; init; }
    public int? Ticket { get; init; }
    public string StrungBy { get; init; } = "";

    /// <summary>What goes into the job's note.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Why somebody should look at it once more.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];
}
