namespace TagPage.Core.Customising.Planning;

/// <summary>
/// Looks for pieces that can be cut and weighed. First near exact plans: where each frame can come to what is wanted, they do
/// and are then made as alike as is worth its mass; where not all can, they become the same, if that leads them no farther
/// away and wins enough, or else each comes as near as it can; where that wins too little for its mass, everything is weighed
/// against the mass. Then among all plans of one or two pieces, so that no frame is left that so little would bring nearer.
/// </summary>
internal sealed class StepSearch
{
    // Ways for each frame that are tried together with those of the others.
    private const int Rounded = 16, Few = 24;

    private const double Nearly = 0.75;

    // In what is missed, or in that and what pieces have to win; see Judge.
    private const double Clearly = 0.5;

    private readonly IReadOnlyList<PlanFrame> _frames;
    private readonly Wanted _wanted;
    private readonly double _stepG;
    private readonly Ways[] _ways;
    private readonly Way[][] _few;
    private readonly Way[] _now;
    private readonly Comparison _compared;

    public StepSearch(IReadOnlyList<PlanFrame> frames, Wanted wanted, double stepG, Tolerances tolerances)
    {
        (_frames, _wanted, _stepG) = (frames, wanted, stepG);
        var judge = new Judge(wanted, tolerances);
        _ways = [.. frames.Select(frame => new Ways(frame, judge, stepG))];
        _few = [.. _ways.Select(ways => ways.One().Concat(ways.Two()).ToArray())];
        _now = [.. _ways.Select(ways => ways.None)];
        _compared = new Comparison(judge, _now);
    }

    private bool IsOne => _frames.Count == 1;

    public StepPlans Find() => IsOne ? One() : Set();

    // The plan rounded, unless other pieces are clearly better: figures that nobody asked for stay near those it says.
    private StepPlans One()
    {
        var exact = Planner.Common(_frames, _wanted).Plans;
        var others = Around(exact);
        var (rounded, best) = (Nearest([[.. RoundedWays(exact[0], 0), _ways[0].None]], others), Nearest(others, others));
        var chosen = rounded is not null && !IsClearlyBetter(best!, rounded) ? rounded : best;
        return new(exact, Plans(chosen ?? _now), null, chosen is not null || FewPieces().CouldBeNearer);
    }

    // As near as pieces come; where that is not worth its mass, what is.
    private Way[]? Nearest(Way[][] ways, Way[][] all) => Chosen(ways, Least(all), mass: true) ?? Chosen(ways, double.MaxValue, mass: true);

    private bool IsClearlyBetter(Way[] best, Way[] rounded)
    {
        var (one, other) = (_compared.Of(best), _compared.Of(rounded));
        return other.Cost - one.Cost > Clearly || other.Missed - one.Missed > Clearly;
    }

    private StepPlans Set()
    {
        if (Best() is { Ways: { } ways } found)
            return new(found.Exact, Plans(Polished(ways)), found.Common, true);
        var (few, couldBe) = FewPieces();
        return new(Plans(few ?? _now), Plans(few ?? _now), null, couldBe);
    }

    // A frame at a time, to whatever one or two pieces do better, as long as what is wanted is missed by no more.
    private Way[] Polished(Way[] found) =>
        new Descent(_compared, _compared.Of(found).Missed, mass: true).From(found, [.. _few.Select((few, i) => few.Append(_ways[i].None).ToArray())]);

    private (Way[]? Best, bool CouldBeNearer) FewPieces() => new FewPieces(_compared, _now, _ways, _few).Best();

    private Found Best()
    {
        // Nearer would do, were it not for the mass: nothing that they have in common is the nearest.
        var weighed = Near(Planner.Weighed(_frames, _wanted, Judge.Gram), mass: true) with { Common = null };
        if (_wanted == new Wanted())
            return Same(weighed);
        var exact = Planner.WantedFirst(_frames, _wanted, Judge.Gram);
        var first = Near(exact, wantedFirst: true);
        return exact.Plans.All(plan => Miss.Of(plan.After, _wanted).BeyondRounding == Figures.None)
            ? first.Ways is null ? weighed : first
            : Same(Rather(first, weighed));
    }

    // To be the same is what a set is for, as long as it leads no farther away and wins nearly as much as what else could be done.
    private Found Same(Found otherwise)
    {
        var exact = Planner.Common(_frames, _wanted);
        if (!IsNearer(exact.Plans))
            return otherwise;
        return Rather(Near(exact), otherwise);
    }

    private Found Rather(Found found, Found otherwise) => found.Ways is not null && Won(found) >= Nearly * Won(otherwise) ? found : otherwise;

    private double Won(Found found) => found.Ways is { } ways ? _compared.Cost - _compared.Of(ways).Cost : 0;

    private bool IsNearer(IReadOnlyList<Plan> plans) =>
        _compared.Of([.. plans.Select((plan, i) => _ways[i].Of([.. plan.AddedG, .. plan.RemovedG]))]).IsNearer;

    private sealed record Found(IReadOnlyList<Plan> Exact, Body? Common, Way[]? Ways);

    private Found Near((Body Target, IReadOnlyList<Plan> Plans) exact, bool wantedFirst = false, bool mass = false)
    {
        var ways = Around(exact.Plans);
        var common = exact.Plans.All(plan => Miss.Of(plan.After, Wanted.Of(exact.Target)).BeyondRounding == Figures.None);
        return new(exact.Plans, common ? exact.Target : null, Chosen(ways, wantedFirst ? Least(ways) : double.MaxValue, mass));
    }

    private static double Least(Way[][] ways) => ways.Sum(some => some.Min(way => way.Missed));

    private Way[][] Around(IReadOnlyList<Plan> exact) => [.. exact.Select((plan, i) => Around(plan, i).ToArray())];

    private IEnumerable<Way> Around(Plan plan, int frame) => RoundedWays(plan, frame)
        .Concat(IsOne ? _few[frame] : _few[frame].OrderBy(way => Miss.Of(way.After, Goal(plan)).Sum).Take(Few))
        .Append(_ways[frame].None);

    private IEnumerable<Way> RoundedWays(Plan plan, int frame) => Rounding.Near(plan, Goal(plan), _stepG, Rounded).Select(_ways[frame].Of);

    private Wanted Goal(Plan plan) => IsOne && Miss.Of(plan.After, _wanted).Figures == Figures.None ? _wanted : Wanted.Of(plan.After);

    private Way[]? Chosen(Way[][] ways, double leastMissed, bool mass)
    {
        var descent = new Descent(_compared, leastMissed, mass);
        var best = Starts(ways).Select(start => descent.From(start, ways)).MinBy(descent.Of)!;
        return _compared.Of(best) is { IsNearer: true } verdict && verdict.Cost < _compared.Cost ? best : null;
    }

    // Each by itself can pull apart what is the same to a hair; the same pieces on all leave them as near as they were.
    private IEnumerable<Way[]> Starts(Way[][] ways) =>
        ways.SelectMany(some => some.Take(IsOne ? 0 : 4)).Where(like => _frames.All(frame => CanCarry(frame, like.Grams)))
            .Select(like => _ways.Select(each => each.Of(like.Grams)).ToArray())
            .Prepend([.. ways.Select(some => some[0])]);

    private bool CanCarry(PlanFrame frame, double[] grams) =>
        frame.Removable.Count == 0 && frame.Places.Count == grams.Length
        && frame.Places.Zip(_frames[0].Places).All(places => places.First with { MostG = 0 } == places.Second with { MostG = 0 })
        && frame.Places.Zip(grams).All(place => place.Second <= place.First.MostG + 1e-9);

    private Plan[] Plans(Way[] ways) =>
        [.. _frames.Zip(ways, (frame, way) => new Plan(frame, way.Grams[..frame.Places.Count], way.Grams[frame.Places.Count..]))];
}
