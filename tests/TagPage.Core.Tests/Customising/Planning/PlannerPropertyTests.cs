using CsCheck;
using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Core.Tests.Customising.Planning;

public class PlannerPropertyTests
{
    [Fact]
    public void Plan_applied_gives_the_target() =>
        Reachable.Sample(
            (body, wanted) => Miss.Of(Planner.Nearest([new PlanFrame(body, PlannerTests.Places)], wanted)[0].After, wanted).Figures == Figures.None,
            iter: 200);

    [Fact]
    public void Rounded_plan_misses_by_no_more_than_rounding_place_by_place() =>
        Reachable.Sample((body, wanted) =>
        {
            var plan = Planner.Nearest([new PlanFrame(body, PlannerTests.Places)], wanted)[0];
            var plain = plan with
            {
                AddedG = [.. plan.AddedG.Zip(plan.Frame.Places, (grams, place) => Math.Min(place.MostG, Half(grams, place.Paired ? 1 : 0.5)))],
            };
            var grams = Rounding.Near(plan, wanted, 0.5, 1)[0];
            var rounded = plan with { AddedG = grams[..plan.AddedG.Count], RemovedG = grams[plan.AddedG.Count..] };
            return Miss.Of(rounded.After, wanted).Squared <= Miss.Of(plain.After, wanted).Squared + 1e-9
                && rounded.AddedG.Zip(plan.Frame.Places).All(p => IsWhole(p.First / (p.Second.Paired ? 1 : 0.5)));
        }, iter: 200);

    [Fact]
    public void Least_mass_agrees_with_every_vertex_worked_out() =>
        Reachable.Sample((body, wanted) =>
        {
            var plan = Planner.Nearest([new PlanFrame(body, PlannerTests.Places)], wanted)[0];
            var (columns, b) = Equations(body, wanted);
            double[] most = [.. PlannerTests.Places.Select(place => place.MostG)];
            // The sum is fixed by the weight that is wanted; the twist weight is what is left to choose.
            double[] twist = [.. PlannerTests.Places.Select(place => place.OffAxisCm * place.OffAxisCm / 1000)];
            return Math.Abs(plan.TotalG - (wanted.MassG!.Value - body.MassG)) < 1e-4
                && Math.Abs(plan.TwistChange - Vertices.Smallest(columns, b, twist, most)!.Value) < 1e-4;
        }, iter: 20);

    [Fact]
    public void Least_mass_for_balance_and_swing_weight_agrees_with_every_vertex_worked_out() =>
        Reachable.Sample((body, all) =>
        {
            // To six decimals, as the planner takes them: finer ones can move the least mass by more than a ten thousandth of a gram.
            var wanted = new Wanted { BalanceCm = Math.Round(all.BalanceCm!.Value, 6), SwingWeight = Math.Round(all.SwingWeight!.Value, 6) };
            var plan = Planner.Nearest([new PlanFrame(body, PlannerTests.Places)], wanted)[0];
            var (columns, b) = Equations(body, wanted with { MassG = all.MassG });
            double[] most = [.. PlannerTests.Places.Select(place => place.MostG)];
            var least = Vertices.Smallest([.. columns.Select(column => column[1..])], b[1..], [.. most.Select(_ => 1.0)], most);
            // Six decimals can put a target that hardly differs from the racket a hair out of reach; then there is no vertex.
            return least is null ? Miss.Of(plan.After, wanted).Figures == Figures.None : Math.Abs(plan.TotalG - least.Value) < 1e-4;
        }, iter: 40);

    [Fact]
    public void Least_miss_agrees_with_every_vertex_worked_out() =>
        Anything.Sample((body, wanted) =>
        {
            var plan = Planner.Nearest([new PlanFrame(body, PlannerTests.Places)], wanted)[0];
            var (columns, b) = Equations(body, wanted);
            var perMoment = 10 / Math.Round(wanted.MassG!.Value);
            double[][] misses = [[1, 0, 0], [-1, 0, 0], [0, 1, 0], [0, -1, 0], [0, 0, 1], [0, 0, -1]];
            double[] most = [.. PlannerTests.Places.Select(place => place.MostG), .. misses.Select(_ => double.PositiveInfinity)];
            double[] cost = [.. PlannerTests.Places.Select(_ => 0.0), 1, 1, perMoment, perMoment, 1, 1];
            var miss = Miss.Of(plan.After, wanted);
            var missed = Math.Abs(miss.MassG) + Math.Abs(miss.BalanceMm / 10 * plan.After.MassG * perMoment) + Math.Abs(miss.SwingWeight);
            return Math.Abs(missed - Vertices.Smallest([.. columns, .. misses], b, cost, most)!.Value) < 1e-3;
        }, iter: 5);

    // Two frames and no limits, so that an answer from all vertices takes a moment only.
    [Fact]
    public void Least_mass_of_a_pair_of_frames_agrees_with_every_vertex_worked_out() =>
        Gen.Select(Bodies, Bodies).Sample((one, other) =>
        {
            FramePlace[] places = [.. PlannerTests.Places.Where(place => place.AtCm is 0 or 18 or 53 or 68.5).Select(place => place with { MostG = 200 })];
            var plans = Planner.Nearest([new PlanFrame(one, places), new PlanFrame(other, places)], new Wanted());

            // The same three figures on both: mass, moment and swing weight of the first less those of the second.
            double[][] column = [.. places.Select(place => new[] { 1, place.AtCm, Math.Pow(place.AtCm - 10, 2) / 1000 })];
            double[][] columns = [.. column, .. column.Select(c => (double[])[.. c.Select(v => -v)])];
            double[] b = [other.MassG - one.MassG, (other.MassG * other.BalanceCm) - (one.MassG * one.BalanceCm), other.SwingWeight - one.SwingWeight];
            double[] most = [.. columns.Select(_ => double.PositiveInfinity)];
            var least = Vertices.Smallest(columns, b, [.. columns.Select(_ => 1.0)], most);
            return Math.Abs(plans.Sum(plan => plan.TotalG) - least!.Value) < 1e-4;
        }, iter: 40);

    [Fact]
    public void Nearest_that_a_pair_has_in_common_agrees_with_every_vertex_worked_out() =>
        Gen.Select(Bodies, Bodies, Bodies).Sample((one, other, all) =>
        {
            FramePlace[] places = [.. PlannerTests.Places.Where(place => place.AtCm is 0 or 18 or 53 or 68.5).Select(place => place with { MostG = 200 })];
            var wanted = new Wanted { MassG = all.MassG, SwingWeight = all.SwingWeight };
            var (target, plans) = Planner.Common([new PlanFrame(one, places), new PlanFrame(other, places)], wanted);

            // Weight and swing weight of both miss by the same; the moments of both are one. A miss costs far more than a gram.
            const double Dear = 10_000;
            double[][] of = [.. places.Select(place => new[] { 1, place.AtCm, Math.Pow(place.AtCm - 10, 2) / 1000 })];
            double[][] columns =
            [
                .. of.Select(c => new[] { c[0], 0, c[2], 0, c[1] }), .. of.Select(c => new[] { 0, c[0], 0, c[2], -c[1] }),
                [1, 1, 0, 0, 0], [-1, -1, 0, 0, 0], [0, 0, 1, 1, 0], [0, 0, -1, -1, 0],
            ];
            double[] b = [all.MassG - one.MassG, all.MassG - other.MassG, all.SwingWeight - one.SwingWeight, all.SwingWeight - other.SwingWeight,
                (other.MassG * other.BalanceCm) - (one.MassG * one.BalanceCm)];
            var least = Vertices.Smallest(columns, b, [.. of.Select(_ => 1.0), .. of.Select(_ => 1.0), Dear, Dear, Dear, Dear], [.. columns.Select(_ => double.PositiveInfinity)]);
            var missed = Math.Abs(target.MassG - all.MassG) + Math.Abs(target.SwingWeight - all.SwingWeight);
            return Math.Abs((Dear * missed) + plans.Sum(plan => plan.TotalG) - least!.Value) < 1e-2
                && plans.All(plan => Miss.Of(plan.After, Wanted.Of(target)).Figures == Figures.None);
        }, iter: 40);

    [Fact]
    public void Racket_twice_as_heavy_needs_twice_as_much() =>
        Reachable.Sample((body, wanted) =>
        {
            FramePlace[] wide = [.. PlannerTests.Places.Select(place => place with { MostG = place.MostG * 2 })];
            // Kept to the planner's six decimals, so that twice the figure is twice what it plans with.
            var free = wanted with { MassG = null, SwingWeight = Math.Round(wanted.SwingWeight!.Value, 6) };
            var once = Planner.Nearest([new PlanFrame(body, PlannerTests.Places)], free)[0];
            var twice = Planner.Nearest([new PlanFrame(new Body(body.MassG * 2, body.BalanceCm, body.SwingWeight * 2), wide)], free with { SwingWeight = free.SwingWeight * 2 })[0];
            return Math.Abs(twice.TotalG - (once.TotalG * 2)) < 1e-4;
        }, iter: 100);

    private static (double[][] Columns, double[] B) Equations(Body body, Wanted wanted) =>
    (
        [.. PlannerTests.Places.Select(place => new[] { 1, place.AtCm - wanted.BalanceCm!.Value, Math.Pow(place.AtCm - 10, 2) / 1000 })],
        [wanted.MassG!.Value - body.MassG, -body.MassG * (body.BalanceCm - wanted.BalanceCm!.Value), wanted.SwingWeight!.Value - body.SwingWeight]
    );

    private static double Half(double grams, double step) => Math.Round(grams / step, MidpointRounding.AwayFromZero) * step;

    private static bool IsWhole(double steps) => Math.Abs(steps - Math.Round(steps)) < 1e-9;

    private static readonly Gen<Body> Bodies =
        Gen.Select(Gen.Int[2800, 3300], Gen.Int[310, 340], Gen.Int[270, 340]).Select((m, b, s) => new Body(m / 10.0, b / 10.0, s));

    private static readonly Gen<(Body Body, Wanted Wanted)> Reachable =
        Gen.Select(Bodies, Gen.Double[0, 6].Array[7]).Select((body, grams) =>
            (body, Wanted.Of(body.With(PlannerTests.Places.Zip(grams, (place, g) => place.Carrying(g))))));

    private static readonly Gen<(Body Body, Wanted Wanted)> Anything =
        Gen.Select(Bodies, Bodies).Select((body, other) => (body, Wanted.Of(other)));
}
