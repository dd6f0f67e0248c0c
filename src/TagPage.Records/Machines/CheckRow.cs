using TagPage.Core.Units;

namespace TagPage.Records.Machines;

/// <summary>What a machine pulled when it was set to a reference.</summary>
public sealed record CheckRow
{
    public long Id { get; init; }
    public DateOnly CheckedOn { get; init; }
    public decimal Reference { get; init; }
    public decimal Measured { get; init; }
    public TensionUnit Unit { get; init; }
    public string Note { get; init; } = "";

    /// <summary>Who of the shop; null where one person alone signs in, or nobody was signed in.</summary>
    public string? By { get; init; }

    /// <summary>Per cent by which it pulled more than it was set to; below zero for less.</summary>
    public decimal Deviation => (Measured - Reference) / Reference * 100;
}
