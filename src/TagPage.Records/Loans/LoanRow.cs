namespace TagPage.Records.Loans;

/// <summary>A racket of the shop's own that is lent, and who has it.</summary>
public sealed record LoanRacketRow
{
    public long Id { get; init; }
    public string Name { get; init; } = "";
    public string Note { get; init; } = "";

    /// <summary>It is no longer lent.</summary>
    public bool IsEnded { get; init; }
    public int Version { get; init; }

    /// <summary>Of the client who has it now; all null while it is at the shop.</summary>
    public long? LoanId { get; init; }
    public long? ClientId { get; init; }
    public string? Client { get; init; }
    public DateOnly? LentOn { get; init; }
    public DateOnly? DueOn { get; init; }

    public bool IsFree => LoanId is null && !IsEnded;

    public bool IsOverdue(DateOnly today) => DueOn < today;
}

/// <summary>A racket of the shop's in a client's hands, or given back.</summary>
public sealed record LoanRow
{
    public long Id { get; init; }
    public long LoanRacketId { get; init; }
    public string Racket { get; init; } = "";
    public long ClientId { get; init; }
    public string Client { get; init; } = "";
    public string? ClientPhone { get; init; }
    public DateOnly LentOn { get; init; }
    public DateOnly? DueOn { get; init; }
    public DateOnly? BackOn { get; init; }
    public string Note { get; init; } = "";

    public bool IsOverdue(DateOnly today) => BackOn is null && DueOn < today;
}
