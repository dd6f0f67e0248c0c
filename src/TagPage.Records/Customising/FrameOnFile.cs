using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Core.Units;
using TagPage.Records.Rackets;
using TagPage.Records.Specs;
using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>A frame as far as customising knows it.</summary>
public sealed record FrameOnFile
{
    public required RacketStore.Row Racket { get; init; }
    public bool Junior { get; init; }

    /// <summary>All of them, newest first.</summary>
    public IReadOnlyList<SpecStore.Row> Specs { get; init; } = [];

    /// <summary>The newest spec with weight, balance and swing weight; null where there is none.</summary>
    public SpecStore.Row? Spec { get; init; }
    public SpecFigures Figures { get; init; } = new();
    public IReadOnlyList<FramePlace> Places { get; init; } = [];

    /// <summary>What was added earlier and is still on it.</summary>
    public IReadOnlyList<AddedMassStore.Row> Present { get; init; } = [];

    /// <summary>Grams of a string bed, estimated from the strings it had last.</summary>
    public double StringBedG { get; init; }

    public double LengthCm => (double?)LengthMm / 10 ?? StartingPlaces.LengthCm(Racket.Sport);

    // The newest that was measured, whatever else was measured then; else what the racket's record says.
    private decimal? LengthMm => SpecEntry.Newest(Specs, spec => spec.LengthMm) ?? Racket.LengthCm * 10;

    /// <summary>As it would measure with strings in it; see <see cref="IsEstimated"/>.</summary>
    public Body? Strung => IsEstimated ? Figures.Body?.With(StringBed.AtHead(StringBedG, Racket.Sport, LengthCm)) : Figures.Body;

    /// <summary>What measuring and the estimate of its strings leave open, for a frame that has a spec.</summary>
    public MeasuredBody StrungFigures =>
        Figures.Measured!.Value.With(IsEstimated ? [StringBed.Estimate(StringBedG, Racket.Sport, LengthCm)] : []);

    /// <summary>Whether it was measured without strings, so that with strings it is an estimate.</summary>
    public bool IsEstimated => Spec is { Strung: false };

    /// <summary>Rules of its sport that it leaves.</summary>
    /// <param name="massG">What it weighs then; null where nobody measured it.</param>
    /// <param name="pieces">What is on it then.</param>
    public IReadOnlyList<RuleBreak> Broken(double? massG, IEnumerable<PieceEntry> pieces) =>
        FrameRules.Broken(Racket.Sport, (double?)LengthMm, massG, pieces.Any(piece => piece.OnStrings));

    /// <summary>The same as it is now.</summary>
    public IReadOnlyList<RuleBreak> BrokenNow => Broken((double?)SpecEntry.Newest(Specs, spec => spec.WeightG), Present);

    /// <summary>Whether a piece went on or came off by hand after it was measured last: no spec counts it, and it has to be measured again.</summary>
    public bool HasChanged { get; init; }

    /// <summary>What is odd about a list of places for it.</summary>
    /// <param name="places">With the line of the form that each stands on.</param>
    public IEnumerable<Oddity> Oddities(IEnumerable<(int Line, FramePlaceEntry Place)> places) => places
        .Where(on => on.Place.Place.AtCm > LengthCm + HalfAMm)
        .Select(on => new PlaceBeyondTip(on.Line, new Distance(on.Place.At, on.Place.LengthUnit), (decimal)LengthCm * 10));

    public PlanFrame ToPlan(Body now, PlanLocks locks) => new(now, [.. Places.Where(place => locks.Allow(Places, place)).Select(locks.Limited).Select(Left)])
    {
        Removable = locks.TakeOff ? [.. Present.Select(mass => mass.Mass)] : [],
    };

    private static bool IsAt(FramePlace place, AddedMass piece) =>
        Math.Abs(piece.AtCm - place.AtCm) < HalfAMm && Math.Abs(piece.OffAxisCm - place.OffAxisCm) < HalfAMm;

    // In cm. Both are kept as entered, in units that need not be the same.
    private const double HalfAMm = 0.05;

    // What a place carries already is part of its limit.
    private FramePlace Left(FramePlace place) => place with
    {
        MostG = Math.Max(0, place.MostG - Present.Where(piece => IsAt(place, piece.Mass)).Sum(piece => piece.Mass.Grams)),
    };
}
