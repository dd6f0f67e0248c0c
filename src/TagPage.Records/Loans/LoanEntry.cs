using TagPage.Records.Storage;

namespace TagPage.Records.Loans;

/// <summary>A racket of the shop's own as entered.</summary>
public sealed record LoanRacketEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public string? Note { get; init; }
    public bool IsEnded { get; init; }
}

/// <summary>A loan as entered.</summary>
public sealed record LoanEntry
{
    public string FormKey { get; init; } = "";
    public long RacketId { get; init; }
    public DateOnly LentOn { get; init; }

    /// <summary>Null where no day was agreed.</summary>
    public DateOnly? DueOn { get; init; }
    public string? Note { get; init; }

    internal Refusal? Fault(DateOnly today) =>
        LentOn > today ? new LentInFuture()
        : DueOn < LentOn ? new DueBeforeLent()
        : null;
}
