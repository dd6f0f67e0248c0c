using TagPage.Core.Forecast.Learning;
using TagPage.Core.Strings;

namespace TagPage.Records.Readings;

/// <summary>One reading and the first of the same strings.</summary>
public sealed record ReadingRow
{
    public long Id { get; init; }
    public long JobId { get; init; }
    public long Ticket { get; init; }
    public long RacketId { get; init; }
    public bool First { get; init; }
    public DateOnly StrungOn { get; init; }
    public DateOnly TakenOn { get; init; }
    public string? TakenAt { get; init; }
    public long InstrumentId { get; init; }
    public string Instrument { get; init; } = "";
    public ReadingScale Scale { get; init; }
    public decimal Value { get; init; }
    public decimal? Hours { get; init; }
    public string Note { get; init; } = "";

    /// <summary>Far from what was expected; teaches nothing until the owner says that it counts.</summary>
    public bool Doubtful { get; init; }
    public long? FirstInstrumentId { get; init; }
    public decimal? FirstValue { get; init; }

    /// <summary>Whether it can be compared with the first of these strings.</summary>
    public bool IsComparable => !First && FirstInstrumentId == InstrumentId && TakenOn >= StrungOn;

    /// <summary>Tension lost since the first; null where the two cannot be compared.</summary>
    public double? LossPercent => IsComparable ? MeasuredLoss.Percent(Scale, (double)FirstValue!.Value, (double)Value) : null;
}
