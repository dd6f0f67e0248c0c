using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Core.Units;
using TagPage.Records.Import;

namespace TagPage.Web.StringingLists;

/// <summary>What the owner said about a list. What is null is still to be asked, where the list leaves it open.</summary>
public sealed record ListSettings
{
    /// <summary>One for each column of the list.</summary>
    public IReadOnlyList<ListColumn> Columns { get; init; } = [];

    public DayOrder? Days { get; init; }

    /// <summary>How numbers in the column of days are to be taken.</summary>
    public DayCount? Counted { get; init; }
    public DecimalMark? Decimals { get; init; }
    public TensionUnit? Unit { get; init; }

    /// <summary>Of rackets of which the list does not say it.</summary>
    public Sport? Sport { get; init; }

    /// <summary>Players whom the list names beside their client are children.</summary>
    public bool Juniors { get; init; } = true;

    /// <summary>Strung before this day: collected and paid.</summary>
    public DateOnly? SettledBefore { get; init; }

    /// <summary>What to write down where the list does not say a tension; without it such lines are refused.</summary>
    public decimal? TensionUnknown { get; init; }

    /// <summary>By <see cref="StringText.Key"/>.</summary>
    public IReadOnlyDictionary<string, StringAnswer> Strings { get; init; } = new Dictionary<string, StringAnswer>();

    /// <summary>By the question's key: how many rackets, or which.</summary>
    public IReadOnlyDictionary<string, string> Rackets { get; init; } = new Dictionary<string, string>();

    /// <summary>For rackets that are not answered one by one; null leaves them open.</summary>
    public string? OtherRackets { get; init; }

    /// <summary>Clients who may be on file and are not answered one by one.</summary>
    public OtherMatches Others { get; init; } = OtherMatches.MergeSure;

    /// <summary>What the next list with the same headings starts with: nothing of this one's people and days.</summary>
    public ListSettings ForNext() => this with { SettledBefore = null, Rackets = new Dictionary<string, string>(), OtherRackets = null, Others = OtherMatches.MergeSure };
}

/// <param name="KindId">Of the catalogue; null for a new one.</param>
/// <param name="Material">Of a new one.</param>
/// <param name="GaugeMm">Of a new one.</param>
public sealed record StringAnswer(long? KindId, Material? Material, decimal? GaugeMm);
