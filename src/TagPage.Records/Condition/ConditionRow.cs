using TagPage.Core.Rackets;

namespace TagPage.Records.Condition;

/// <summary>What a racket looked like when it came in for a job, with the photos that were taken of it.</summary>
public sealed record ConditionRow
{
    public long JobId { get; init; }
    public long Ticket { get; init; }
    public DateOnly ReceivedOn { get; init; }
    public PartState? Frame { get; init; }
    public string FrameWords { get; init; } = "";
    public PartState? Grommets { get; init; }
    public string GrommetsWords { get; init; } = "";
    public PartState? Bumper { get; init; }
    public string BumperWords { get; init; } = "";
    public PartState? Grip { get; init; }
    public string GripWords { get; init; } = "";

    /// <summary>0 where nothing is noted.</summary>
    public int Version { get; init; }

    public IReadOnlyList<PhotoRow> Photos { get; init; } = [];

    /// <summary>The parts that were looked at.</summary>
    public IEnumerable<PartNote> Parts => new PartNote[]
    {
        new(RacketPart.Frame, Frame, FrameWords),
        new(RacketPart.Grommets, Grommets, GrommetsWords),
        new(RacketPart.Bumper, Bumper, BumperWords),
        new(RacketPart.Grip, Grip, GripWords),
    }.Where(part => part.State is not null || part.Words.Length > 0);
}

/// <summary>What was noted about one part.</summary>
/// <param name="Part">Which.</param>
/// <param name="State">Null where there are words alone.</param>
/// <param name="Words">Empty for none.</param>
public sealed record PartNote(RacketPart Part, PartState? State, string Words);
