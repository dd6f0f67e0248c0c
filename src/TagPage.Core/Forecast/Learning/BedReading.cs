using TagPage.Core.Strings;

namespace TagPage.Core.Forecast.Learning;

/// <summary>A number measured on a strung bed, dampener off.</summary>
public sealed record BedReading
{
    /// <summary>The reading's own number.</summary>
    public long Id { get; init; }

    /// <summary>Right after stringing; the later ones are compared with it.</summary>
    public required bool IsFirst { get; init; }

    public required DateOnly Day { get; init; }

    /// <summary>The time of day, where it was noted.</summary>
    public TimeOnly? Time { get; init; }

    /// <summary>Two instruments are not comparable.</summary>
    public required long InstrumentId { get; init; }

    public required ReadingScale Scale { get; init; }

    public required double Value { get; init; }

    /// <summary>Hours played on the strings when it was taken, frozen then; null where nobody can tell.</summary>
    public double? Hours { get; init; }

    /// <summary>Not counted, or not yet: it lies far from what was expected, or nobody has looked at it. Teaches nothing.</summary>
    public bool IsDoubtful { get; init; }

    /// <summary>The loss against the first reading; null where the two cannot be compared.</summary>
    public LossReading? LossSince(BedReading first)
    {
        var days = DaysSince(first);
        return days < 0 || (Hours - first.Hours) is not { } hours || InstrumentId != first.InstrumentId || Scale != first.Scale
            ? null
            : new LossReading(days, Math.Max(0, hours), MeasuredLoss.Percent(Scale, first.Value, Value));
    }

    private double DaysSince(BedReading first)
    {
        double days = Day.DayNumber - first.Day.DayNumber;
        return Time is { } time && first.Time is { } begun ? days + ((time.Ticks - begun.Ticks) / (double)TimeSpan.TicksPerDay) : days;
    }
}
