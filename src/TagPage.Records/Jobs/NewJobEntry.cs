using TagPage.Core.Jobs;
using TagPage.Core.Sports;
using TagPage.Records.Condition;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>A new job as entered.</summary>
public sealed record NewJobEntry : JobEntry
{
    public string FormKey { get; init; } = "";

    /// <summary>The price is that of another list than the shop's, as an event has one: a single line.</summary>
    public bool IsPricedWhole { get; init; }

    /// <summary>How the strings in the racket ended; null while they are still in.</summary>
    public BedEnd? OldEndedHow { get; init; }

    /// <summary>Null for the day the racket came in.</summary>
    public DateOnly? OldEndedOn { get; init; }

    /// <summary>Read on the strings it came with, before they are cut out; null where nothing was read.</summary>
    public decimal? OldReading { get; init; }
    public long? OldInstrumentId { get; init; }

    /// <summary>What the racket looks like as it comes in.</summary>
    public ConditionEntry Condition { get; init; } = new();
    public IReadOnlyList<PhotoEntry> Photos { get; init; } = [];

    /// <summary>The day of that reading.</summary>
    public DateOnly OldReadOn => OldEndedOn ?? ReceivedOn;

    /// <param name="sport">The racket's.</param>
    /// <param name="shop">Whose currency the price is in.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="bed">The strings that are in the racket.</param>
    internal IEnumerable<Refusal> Faults(Sport sport, ShopDetails shop, DateOnly today, BedStore.Open? bed)
    {
        if (OldEndedHow is not null && OldReadOn < bed?.StrungOn)
            yield return new EndsBeforeStrung(nameof(OldEndedOn), bed.StrungOn);
        foreach (var why in Order.Faults(sport, shop)
            .Concat(new JobDays { ReceivedOn = ReceivedOn, PromisedFor = PromisedFor }.Faults(today))
            .Concat(DayRule.Faults(nameof(OldEndedOn), OldEndedOn, today))
            .Concat(ReadingRules.Faults(OldReading, OldInstrumentId, nameof(OldReading), nameof(OldInstrumentId))))
            yield return why;
    }
}
