using TagPage.Core.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Visits;

/// <summary>A visit as entered.</summary>
public sealed record VisitEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public DateOnly DoneOn { get; init; }
    public IReadOnlyList<VisitWork> Works { get; init; } = [];
    public string? Note { get; init; }

    /// <summary>Of a new one: numbers of what the price list has, and the price in the shop's currency, null for that of the list.</summary>
    public IReadOnlyList<long> Extras { get; init; } = [];
    public decimal? Price { get; init; }

    internal Refusal? Fault(DateOnly today, ShopDetails shop) =>
        DoneOn > today ? new VisitInFuture()
        : Works.Count == 0 ? new NothingDone()
        : Works.Contains(VisitWork.Other) && string.IsNullOrWhiteSpace(Note) ? new OtherWorkUnsaid()
        : Price is { } price && Currencies.ToMinor(price, shop.Currency) is not >= 0 ? new VisitPriceUnlikely()
        : null;
}
