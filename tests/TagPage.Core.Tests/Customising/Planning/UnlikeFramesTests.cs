using CsCheck;
using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Core.Tests.Customising.Planning;

/// <summary>The programmes for two frames that cannot become the same, against every vertex worked out.</summary>
public class UnlikeFramesTests
{
    // An earlier wish costs far more than a later one.
    private const double Dear = 10_000, Gram = 0.2;

    private static readonly FramePlace[] Butt = [new("Butt cap", 0) { MostG = 500 }], Top = [new("Top of the handle", 18) { MostG = 500 }];

    [Fact]
    public void Frames_are_left_as_little_apart_as_any_vertex_leaves_them_and_then_come_as_near() => Pairs.Sample(pair =>
    {
        var (apart, missed, _) = Counted(Planner.Common(pair.Frames, pair.Wanted), pair.Wanted, common: true);
        return Agrees((Dear * apart) + missed, Least(pair.Frames, pair.Wanted, common: true, Dear, 1, 0));
    }, iter: 10);

    [Fact]
    public void Frames_come_as_near_to_what_is_wanted_as_any_vertex_does_and_then_are_as_little_apart_as_is_worth_the_mass() => Pairs.Sample(pair =>
    {
        var (apart, missed, added) = Counted(Planner.WantedFirst(pair.Frames, pair.Wanted, Gram), pair.Wanted, common: false);
        return Agrees((Dear * missed) + apart + (Gram * added), Least(pair.Frames, pair.Wanted, common: false, 1, Dear, Gram));
    }, iter: 10);

    [Fact]
    public void Mass_wins_what_it_has_to_as_in_the_best_vertex() => Pairs.Sample(pair =>
    {
        var (apart, missed, added) = Counted(Planner.Weighed(pair.Frames, pair.Wanted, Gram), pair.Wanted, common: false);
        return Agrees(missed + apart + (Gram * added), Least(pair.Frames, pair.Wanted, common: false, 1, 1, Gram));
    }, iter: 10);

    private static bool Agrees(double found, double least) => Math.Abs(found - least) < 1e-3 + (1e-6 * least);

    // Worked out from the frames themselves: how far each is from what they have in common, and that or each frame from what is wanted.
    private static (double Apart, double Missed, double Added) Counted((Body Target, IReadOnlyList<Plan> Plans) found, Wanted wanted, bool common)
    {
        var pivot = found.Plans.Average(plan => plan.Frame.Now.BalanceCm);
        var target = Figures(found.Target, pivot, wanted.MassG!.Value);
        double[] given = [wanted.MassG!.Value, double.NaN, wanted.SwingWeight!.Value];
        var off = found.Plans.SelectMany(plan => Figures(plan.After, pivot, wanted.MassG.Value).Select((figure, i) => (i, By: Math.Abs(figure - target[i])))).ToList();
        return common
            ? (off.Sum(o => o.By), Enumerable.Range(0, 3).Where(i => i != 1).Sum(i => Math.Abs(target[i] - given[i])), found.Plans.Sum(plan => plan.TotalG))
            : (off.Where(o => o.i == 1).Sum(o => o.By), off.Where(o => o.i != 1).Sum(o => o.By), found.Plans.Sum(plan => plan.TotalG));
    }

    // Grams, the moment in what a millimetre of balance weighs, kg·cm².
    private static double[] Figures(Body body, double pivot, double mass) => [body.MassG, body.MassG * (body.BalanceCm - pivot) * 10 / Math.Round(mass), body.SwingWeight];

    private static double Least(PlanFrame[] frames, Wanted wanted, bool common, double apart, double missed, double gram)
    {
        List<(double[] Column, double Cost)> columns = [];
        var (pivot, perMoment) = (frames.Average(frame => frame.Now.BalanceCm), 10 / Math.Round(wanted.MassG!.Value));
        for (var frame = 0; frame < 2; frame++)
        {
            columns.AddRange(frames[frame].Places.Select(place => (At(frame, [1, (place.AtCm - pivot) * perMoment, Math.Pow(place.AtCm - 10, 2) / 1000]), gram)));
            for (var figure = 0; figure < 3; figure++)
            {
                double[] by = [.. Enumerable.Range(0, 3).Select(i => i == figure ? 1.0 : 0)];
                var cost = common || figure == 1 ? apart : missed;
                columns.AddRange([(At(frame, by), cost), (At(frame, [.. by.Select(b => -b)]), cost)]);
            }
        }
        // What they have in common: the moment may be anything, the others too where they need not be what is wanted.
        columns.AddRange([([0, 1, 0, 0, 1, 0], 0), ([0, -1, 0, 0, -1, 0], 0)]);
        if (common)
            columns.AddRange([([1, 0, 0, 1, 0, 0], missed), ([-1, 0, 0, -1, 0, 0], missed), ([0, 0, 1, 0, 0, 1], missed), ([0, 0, -1, 0, 0, -1], missed)]);
        double[] b = [.. frames.SelectMany(frame => Figures(frame.Now, pivot, wanted.MassG.Value).Zip(new[] { wanted.MassG.Value, 0, wanted.SwingWeight!.Value }, (now, goal) => goal - now))];
        return Vertices.Smallest([.. columns.Select(c => c.Column)], b, [.. columns.Select(c => c.Cost)], [.. columns.Select(_ => double.PositiveInfinity)])!.Value;
    }

    private static double[] At(int frame, double[] figures) => frame == 0 ? [.. figures, 0, 0, 0] : [0, 0, 0, .. figures];

    private static readonly Gen<Body> Bodies =
        Gen.Select(Gen.Int[3100, 3200], Gen.Int[315, 325], Gen.Int[310, 325]).Select((m, b, s) => new Body(m / 10.0, b / 10.0, s));

    private static readonly Gen<(PlanFrame[] Frames, Wanted Wanted)> Pairs = Gen.Select(Bodies, Bodies, Gen.Int[315, 325], Gen.Int[315, 330]).Select((one, other, mass, swing) =>
        (new PlanFrame[] { new(one, Butt), new(other, Top) }, new Wanted { MassG = mass, SwingWeight = swing }));
}
