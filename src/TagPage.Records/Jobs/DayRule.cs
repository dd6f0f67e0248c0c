using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>A day on which something happened cannot be in the future.</summary>
public static class DayRule
{
    public static IEnumerable<Refusal> Faults(string place, DateOnly? day, DateOnly today)
    {
        if (day > today)
            yield return new DayToCome(place, today);
        if (day < ShopClock.Earliest)
            yield return new YearUnlikely(place);
    }
}

/// <summary>Something happened on a day after today.</summary>
public sealed record DayToCome(string Place, DateOnly Today) : Refusal(Place);

/// <summary>A day so far from the others that the year must be wrong.</summary>
public sealed record YearUnlikely(string Place) : Refusal(Place);
