using TagPage.Core.Jobs;
using TagPage.Core.Money;

namespace TagPage.Records.Events;

/// <summary>An event with a desk.</summary>
public sealed record EventRow
{
    /// <summary>SQL: what a SELECT FROM event v names.</summary>
    internal const string Columns = """
        v.id, v.name, v.place, v.from_on, v.to_on, v.label_tape, v.price_own_minor, v.price_desk_minor, v.last_number, v.secret, v.closed_at, v.version
        """;

    public long Id { get; init; }
    public string Name { get; init; } = "";
    public string Place { get; init; } = "";
    public DateOnly FromOn { get; init; }
    public DateOnly ToOn { get; init; }

    /// <summary>Colour of the tape that the desk's labels are printed on; empty for the shop's usual one.</summary>
    public string LabelTape { get; init; } = "";

    /// <summary>With the player's own string; null where it was not said.</summary>
    public long? PriceOwnMinor { get; init; }

    /// <summary>With a string of the desk's.</summary>
    public long? PriceDeskMinor { get; init; }
    public int LastNumber { get; init; }
    public string Secret { get; init; } = "";
    public DateTimeOffset? ClosedAt { get; init; }
    public int Version { get; init; }

    public bool IsOpen => ClosedAt is null;

    /// <summary>What a racket costs with strings of the player's or the desk's, or half of each; null where it was not said.</summary>
    public long? PriceMinor(Supplier mains, Supplier crosses) =>
        mains == crosses ? (mains == Supplier.Shop ? PriceDeskMinor : PriceOwnMinor) : (PriceOwnMinor, PriceDeskMinor) is ({ } own, { } desk) ? StringPrice.HalfOf(own + desk) : null;

    public IEnumerable<DateOnly> Days => Enumerable.Range(0, ToOn.DayNumber - FromOn.DayNumber + 1).Select(FromOn.AddDays);
}
