using TagPage.Core.Strings;

namespace TagPage.Records.Stock;

/// <summary>A string the shop keeps account of, and how much is left of it.</summary>
public sealed record StockRow
{
    public long StringId { get; init; }
    public string Name { get; init; } = "";
    public decimal GaugeMm { get; init; }
    public StockUnit Unit { get; init; }
    public int RacketCm { get; init; }
    public int ReorderCm { get; init; }
    public long LeftCm { get; init; }
    public int Version { get; init; }

    /// <summary>What jobs that wait or are on the machine will take.</summary>
    public long WaitingCm { get; init; }

    /// <summary>What was paid for all that was bought at a known price, and its length; both 0 where none is known.</summary>
    public long CostMinor { get; init; }
    public long CostCm { get; init; }

    public StockLength Length => new(Unit, RacketCm);

    public bool IsLow => LeftCm <= ReorderCm;

    /// <summary>More was used than ever came in: a count puts it right.</summary>
    public bool IsBelowZero => LeftCm < 0;

    public bool IsTooLittle => LeftCm < WaitingCm;

    /// <summary>What a length cost on average, in minor units; null where no price is known.</summary>
    public long? CostOf(long centimetres) => CostCm == 0 ? null : (long)Math.Round((decimal)CostMinor * centimetres / CostCm, MidpointRounding.AwayFromZero);
}

public enum StockMoveKind
{
    Bought,
    Counted,
    Used,
}

/// <summary>What came in, went, or was found by counting.</summary>
public sealed record StockMove
{
    public StockMoveKind Kind { get; init; }

    /// <summary>Below zero for what went.</summary>
    public long Centimetres { get; init; }

    public long? CostMinor { get; init; }
    public long? JobId { get; init; }
    public long? Ticket { get; init; }
    public string Note { get; init; } = "";
    public DateTimeOffset MadeAt { get; init; }

    /// <summary>What was left then.</summary>
    public long LeftCm { get; init; }
}
