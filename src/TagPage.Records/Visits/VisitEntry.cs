using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Visits;

/// <summary>A visit as entered.</summary>
public sealed record VisitEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }

    /// <summary>Null for one that waits.</summary>
    public DateOnly? DoneOn { get; init; }

    /// <summary>Of one that waits; null where no day was promised.</summary>
    public DateOnly? PromisedFor { get; init; }
    /// <summary>Of one that waits, as of any job.</summary>
    public long? LeftAtId { get; init; }
    public long? CollectAtId { get; init; }
    public IReadOnlyList<VisitWork> Works { get; init; } = [];
    public string? Note { get; init; }

    /// <summary>Of a new one: numbers of what the price list has, and the price in the shop's currency, null for that of the list.</summary>
    public IReadOnlyList<long> Extras { get; init; } = [];
    public decimal? Price { get; init; }

    internal StopChoice Stops => new(LeftAtId, CollectAtId);

    /// <param name="today">The shop’s day.</param>
    /// <param name="shop">In whose currency the price is.</param>
    /// <param name="receivedOn">The day it came in.</param>
    internal Refusal? Fault(DateOnly today, ShopDetails shop, DateOnly receivedOn) =>
        DoneOn > today ? new VisitInFuture()
        : Works.Count == 0 ? new NothingDone()
        : Works.Contains(VisitWork.Other) && string.IsNullOrWhiteSpace(Note) ? new OtherWorkUnsaid()
        : Price is { } price && Currencies.ToMinor(price, shop.Currency) is not >= 0 ? new VisitPriceUnlikely()
        : DoneOn is null ? new JobDays { ReceivedOn = receivedOn, PromisedFor = PromisedFor }.Faults(today).FirstOrDefault()
        : null;
}
