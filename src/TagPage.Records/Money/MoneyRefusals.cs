using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <param name="Ticket">The job's.</param>
/// <param name="On">When it was paid.</param>
public sealed record PaidAlready(long Ticket, DateOnly On) : Refusal;

/// <summary>A payment on a day after today.</summary>
public sealed record PaidInFuture(DateOnly Today) : Refusal(nameof(PaymentEntry.PaidOn));

/// <summary>Before any shop's records begin: a typo in the year.</summary>
public sealed record PaidLongAgo() : Refusal(nameof(PaymentEntry.PaidOn));

/// <summary>Part of a price that nobody has set.</summary>
public sealed record PriceMissing() : Refusal(PaymentEntry.AmountField);

/// <summary>More than is still to be paid for the job.</summary>
public sealed record MoreThanOpen(long OpenMinor, string Currency) : Refusal(PaymentEntry.AmountField);

/// <summary>There is no such amount to be paid.</summary>
public sealed record AmountMissing() : Refusal(PaymentEntry.AmountField);

/// <summary>The payer has less in credit than is still to be paid.</summary>
public sealed record CreditTooSmall(long FreeMinor, string Currency) : Refusal;

public sealed record TakenBackAlready() : Refusal;

/// <summary>Restrings that this payment bought in advance were used.</summary>
public sealed record PrepaidUsed(int Count) : Refusal;

/// <summary>Nothing of that month has still to be billed.</summary>
public sealed record NothingToBill() : Refusal;

/// <summary>The bill is cancelled, or cancels another one.</summary>
public sealed record CancelledAlready() : Refusal;

/// <summary>Neither the bill's addressee nor the shop can do without an email address.</summary>
public sealed record BillUnaddressed() : Refusal;

/// <summary>Nothing is in credit, or nothing is owed that it could pay.</summary>
public sealed record NothingToLay() : Refusal;

/// <summary>Money was laid against the ticket, even if it was taken back since.</summary>
public sealed record PaymentsOnIt() : Refusal;

/// <summary>The lines come to less than nothing, or to more than anybody charges.</summary>
public sealed record PriceImpossible() : Refusal;

/// <summary>The amount of a job that was paid for, in whole or in part, is about to change.</summary>
public sealed record PaidPriceChanges(string Place, long Ticket, long WasMinor, long IsMinor, long LaidMinor, string Currency) : Oddity(Place);

/// <summary>The amount of a job is about to change that stands on a bill, which keeps it as it was.</summary>
/// <param name="Place">Of the amount in the form.</param>
/// <param name="Ticket">Of the job.</param>
/// <param name="Bill">2026-0007.</param>
public sealed record BilledPriceChanges(string Place, long Ticket, string Bill) : Oddity(Place);
