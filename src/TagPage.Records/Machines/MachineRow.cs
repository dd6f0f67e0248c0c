namespace TagPage.Records.Machines;

/// <summary>A stringing machine and how it stands with its checks.</summary>
public sealed record MachineRow
{
    public long Id { get; init; }
    public string Name { get; init; } = "";
    public MachineKind Kind { get; init; }

    /// <summary>Days from one check to the next; null where nobody is to be told.</summary>
    public int? EveryDays { get; init; }

    /// <summary>It is no longer used: nobody is told of it.</summary>
    public bool IsRetired { get; init; }

    public int Version { get; init; }

    public DateOnly? CheckedOn { get; init; }

    /// <summary>When the next check is due; null where nobody is to be told.</summary>
    public DateOnly? DueOn { get; init; }

    public bool IsOverdue(DateOnly today) => DueOn < today;
}
