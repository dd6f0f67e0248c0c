using TagPage.Records.Storage;

namespace TagPage.Records.Prepaid;

public sealed record BoughtInFuture() : Refusal(nameof(PrepaidEntry.BoughtOn));

/// <summary>The year must be wrong.</summary>
public sealed record BoughtLongAgo() : Refusal(nameof(PrepaidEntry.BoughtOn));

public sealed record RestringsUnlikely(int Most) : Refusal(nameof(PrepaidEntry.Restrings));

public sealed record PrepaidAmountMissing() : Refusal("Amount");

/// <summary>Whoever pays for the ticket has none left.</summary>
public sealed record NoPrepaidLeft() : Refusal;

/// <summary>The ticket has one already.</summary>
public sealed record PrepaidOnItAlready(long Ticket) : Refusal;

/// <summary>Nothing of the ticket's price is what they cover, or it is paid.</summary>
public sealed record NothingCovered() : Refusal;

/// <summary>The ticket has none to give back.</summary>
public sealed record NoPrepaidOnIt(long Ticket) : Refusal;
