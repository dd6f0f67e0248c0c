using TagPage.Core.Strings;

namespace TagPage.Records.Readings;

/// <summary>Strings that can be measured, with the reading right after stringing that later ones are compared with.</summary>
public sealed record MeasuredBed
{
    public long JobId { get; init; }
    public long Ticket { get; init; }
    public long RacketId { get; init; }
    public int Number { get; init; }
    public string PlayerName { get; init; } = "";
    public DateOnly StrungOn { get; init; }
    public DateOnly? EndedOn { get; init; }
    public decimal? First { get; init; }
    public long? InstrumentId { get; init; }
    public string? Instrument { get; init; }
    public ReadingScale? Scale { get; init; }
}
