using TagPage.Core.Units;

namespace TagPage.Records.Machines;

/// <summary>A machine as entered.</summary>
public sealed record MachineEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public MachineKind Kind { get; init; }
    public int? EveryDays { get; init; }
    public bool IsRetired { get; init; }
}

/// <summary>A check as entered.</summary>
public sealed record CheckEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly CheckedOn { get; init; }
    public decimal Reference { get; init; }
    public decimal Measured { get; init; }
    public TensionUnit Unit { get; init; }
    public string? Note { get; init; }
}
