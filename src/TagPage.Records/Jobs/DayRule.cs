using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>A day on which something happened cannot be in the future.</summary>
public static class DayRule
{
    /// <summary>No shop's records reach further back; an earlier day is a typo in the year.</summary>
    public static readonly DateOnly Earliest = new(1970, 1, 1);

    public static IEnumerable<Refusal> Faults(string place, DateOnly? day, DateOnly today)
    {
        if (day > today)
            yield return new DayToCome(place, today);
        if (day < Earliest)
            yield return new YearUnlikely(place);
    }
}

/// <summary>Something happened on a day after today.</summary>
public sealed record DayToCome(string Place, DateOnly Today) : Refusal(Place);

/// <summary>A day so far from the others that the year must be wrong.</summary>
public sealed record YearUnlikely(string Place) : Refusal(Place);
