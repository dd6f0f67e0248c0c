using TagPage.Records.Customising;
using TagPage.Records.Specs;

namespace TagPage.Records.Import;

/// <summary>A line about a racket of another file.</summary>
public abstract record OfRacketRow : ImportRow
{
    public RacketRow? Racket { get; init; }
    public long RacketId => Racket!.Id;
}

public sealed record SpecRow : OfRacketRow
{
    public required SpecEntry Spec { get; init; }
}

/// <summary>A line of a frame's own list of places.</summary>
public sealed record PlaceRow : OfRacketRow
{
    public required FramePlaceEntry Place { get; init; }
}

/// <summary>What is or was on a frame.</summary>
public sealed record PieceRow : OfRacketRow
{
    public required PieceEntry Piece { get; init; }
    public DateOnly? RemovedOn { get; init; }
    public bool ByPlan { get; init; }
    public int NotedAfter { get; init; }
    public bool OffByPlan { get; init; }
    public int OffNotedAfter { get; init; }
}
