using TagPage.Core.Jobs;
using TagPage.Core.Units;

namespace TagPage.Records.Jobs;

/// <summary>What is ordered and for when: what a new and a changed job share.</summary>
public record JobEntry
{
    public long? MainsId { get; init; }

    /// <summary>Null for the same string as the mains; likewise for the crosses' tension and supplier.</summary>
    public long? CrossesId { get; init; }
    public NewStringEntry NewString { get; init; } = new();
    public Supplier MainsSuppliedBy { get; init; }
    public Supplier? CrossesSuppliedBy { get; init; }
    public decimal MainsTension { get; init; }
    public decimal? CrossesTension { get; init; }
    public TensionUnit TensionUnit { get; init; }

    /// <summary>Per cent; null for none, and for the crosses for the mains'.</summary>
    public int? MainsPreStretch { get; init; }
    public int? CrossesPreStretch { get; init; }
    public int Pieces { get; init; } = 2;
    public DateOnly ReceivedOn { get; init; }
    public string? ReceivedWhere { get; init; }

    /// <summary>The stop where it was left; null or 0 for the shop's own bench.</summary>
    public long? LeftAtId { get; init; }

    /// <summary>The stop where it is to be collected; 0 for the shop's own bench, null for where it was left.</summary>
    public long? CollectAtId { get; init; }
    public DateOnly? PromisedFor { get; init; }

    /// <summary>In the shop's currency, 24.50.</summary>
    public decimal? Price { get; init; }

    /// <summary>Numbers of what the price list has on top.</summary>
    public IReadOnlyList<long> Extras { get; init; } = [];
    public string? Note { get; init; }

    /// <summary>The form asked about what looks odd, and it was confirmed: kept if a tension is outside the frame's range.</summary>
    public bool Confirmed { get; init; }

    internal StopChoice Stops => new(LeftAtId, CollectAtId);

    internal JobOrder Order => new()
    {
        MainsId = MainsId,
        CrossesId = CrossesId,
        Pieces = Pieces,
        NewString = NewString,
        MainsTension = new Tension(MainsTension, TensionUnit),
        CrossesTension = CrossesTension is { } crosses ? new Tension(crosses, TensionUnit) : null,
        Price = Price,
    };
}
