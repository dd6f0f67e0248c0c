using TagPage.Core.Jobs;
using TagPage.Core.Strings;

namespace TagPage.Core.Forecast.Learning;

/// <summary>One stringing as far as something can be learned from it.</summary>
public sealed record JobHistory
{
    /// <summary>The job's own number.</summary>
    public long Id { get; init; }

    public required Material Mains { get; init; }

    /// <summary>How its strings ended; null while they are in or when nobody noted it.</summary>
    public BedEnd? Ended { get; init; }

    /// <summary>Hours played on them, frozen when they came out; null where not known.</summary>
    public double? Hours { get; init; }

    /// <summary>All readings of these strings, in any order.</summary>
    public IReadOnlyList<BedReading> Readings { get; init; } = [];

    internal bool BrokeByWear => Hours > 0 && Ended is BedEnd.Wear;

    // If nobody knows how they ended, they may have broken: nothing is learned from them.
    internal bool CameOutOtherwise => Hours > 0 && Ended is BedEnd.CutOut or BedEnd.Mishit or BedEnd.Grommet or BedEnd.Machine;

    internal IEnumerable<LossReading> Losses =>
        Readings.FirstOrDefault(reading => reading.IsFirst) is { } first
            ? Readings.Where(reading => reading is { IsFirst: false, IsDoubtful: false }).Select(reading => reading.LossSince(first)).OfType<LossReading>()
            : [];
}
