using TagPage.Core.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>A payment as entered.</summary>
public sealed record PaymentEntry
{
    /// <summary>Forms take it in the shop's currency, 24.50.</summary>
    internal const string AmountField = "Amount";

    /// <summary>For a payment that could be meant twice; empty where the job says that it is paid already.</summary>
    public string FormKey { get; init; } = "";

    public DateOnly PaidOn { get; init; }

    /// <summary>Null for what the party has in credit.</summary>
    public PaymentMethod? Method { get; init; }

    /// <summary>Null for all that is open.</summary>
    public long? AmountMinor { get; init; }

    public string? Note { get; init; }

    internal Refusal? Fault(DateOnly today) =>
        PaidOn > today ? new PaidInFuture(today)
        : PaidOn < ShopClock.Earliest ? new PaidLongAgo()
        : AmountMinor <= 0 ? new AmountMissing()
        : null;
}
