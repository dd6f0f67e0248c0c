using CsCheck;
using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Core.Tests.Customising.Planning;

/// <summary>What becomes of a plan whose pieces have to be cut to half grams.</summary>
public class RoundingTests
{
    private static readonly Body Racket = new(300, 32, 290);

    [Fact]
    public void Place_at_its_limit_is_lowered_where_that_misses_less()
    {
        var plan = new Plan(new PlanFrame(Racket, [new FramePlace("Shoulder", 60) { MostG = 6 }, new FramePlace("Tip", 66)]), [6, 3.26], []);

        // By hand: 6 + 3.5 g miss by 0.24 g, 0.25 mm and 0.75 kg·cm²; 5.5 + 3.5 g by 0.26 g, 0.18 mm and 0.50 kg·cm².
        Assert.Equal([5.5, 3.5], Nearest(plan, Wanted.Of(plan.After)).AddedG);
    }

    [Fact]
    public void Piece_at_a_limit_between_two_steps_is_cut_below_it()
    {
        var plan = new Plan(new PlanFrame(Racket, [new FramePlace("Tip", 66) { MostG = 5.3 }]), [5.3], []);

        Assert.Equal([5.0], Nearest(plan, Wanted.Of(plan.After)).AddedG);
    }

    [Fact]
    public void Earlier_piece_that_comes_off_wholly_need_not_be_whole_steps()
    {
        AddedMass earlier = new(5.3, 66);
        var plan = new Plan(new PlanFrame(Racket.With(earlier), []) { Removable = [earlier] }, [], [5.3]);

        Assert.Equal([5.3], Nearest(plan, Wanted.Of(plan.After)).RemovedG);
    }

    [Fact]
    public void Place_that_a_plan_leaves_empty_stays_empty()
    {
        var plan = new Plan(new PlanFrame(Racket, [new FramePlace("Shoulder", 60), new FramePlace("Tip", 66)]), [0, 3.26], []);

        Assert.Equal(0, Nearest(plan, Wanted.Of(plan.After)).AddedG[0]);
    }

    [Fact]
    public void No_combination_a_step_further_on_any_side_misses_less() => Limited.Sample(grams =>
    {
        FramePlace[] places = [.. PlannerTests.Places.Zip(grams, (place, g) => place with { MostG = Math.Round(g) })];
        var frame = new PlanFrame(Racket, places);
        var plan = Planner.Nearest([frame], Wanted.Of(Racket.With(places.Zip(grams, (place, g) => place.Carrying(Math.Min(g, place.MostG))))))[0];
        var wanted = Wanted.Of(plan.After);
        return Math.Abs(Miss.Of(Nearest(plan, wanted).After, wanted).Squared - Least(plan, wanted)) < 1e-9;
    }, iter: 60);

    [Fact]
    public void Rounded_frame_never_misses_by_more_than_it_does_untouched() => Gen.Select(Near, Gen.Double[0, 8].Array[2]).Sample((grams, earlier) =>
    {
        AddedMass[] removable = [new(earlier[0], 53, 12.5), new(earlier[1], 66)];
        var frame = new PlanFrame(Racket.With(removable), PlannerTests.Places) { Removable = removable };
        var wanted = Wanted.Of(frame.Now.With(PlannerTests.Places.Zip(grams, (place, g) => place.Carrying(g))));
        var plan = Planner.Nearest([frame], wanted)[0];
        var untouched = Miss.Of(frame.Now, wanted).Squared;
        // What cannot be reached may be missed by more of one figure and less of the others before anything is rounded.
        return Miss.Of(plan.After, wanted).Squared >= untouched || Miss.Of(HalfGramTests.Steps([frame], wanted)[0].After, wanted).Squared <= untouched;
    }, iter: 60);

    [Fact]
    public void Rounded_set_is_never_further_apart_than_it_is_untouched() => Gen.Select(Near, Near).Sample((some, others) =>
    {
        Body one = Changed(some), other = Changed(others);
        var rounded = HalfGramTests.Steps([new PlanFrame(one, Few), new PlanFrame(other, Few)], new Wanted());
        return Apart(rounded[0].After, rounded[1].After) <= Apart(one, other);
    }, iter: 60);

    [Fact]
    public void Set_that_is_to_swing_like_something_comes_nearer_to_it_though_its_weights_come_apart()
    {
        Body one = new(300, 32, 290), other = new(300, 32, 290.5);

        var rounded = HalfGramTests.Steps([new PlanFrame(one, Few), new PlanFrame(other, Few)], new Wanted { SwingWeight = 302 });

        Assert.All(rounded, plan => Assert.InRange(plan.After.SwingWeight, 300, 304));
    }

    [Fact]
    public void Rounded_plan_is_nearer_to_what_is_wanted_or_nothing_whether_it_can_be_reached_or_not() => Gen.Select(Around, Around, Gen.Int[1, 7]).Sample((now, other, given) =>
    {
        var wanted = Given(other, given);
        var plan = HalfGramTests.Steps([new PlanFrame(now, PlannerTests.Places)], wanted)[0];
        return plan.Masses.Count == 0 || (Sum(plan.After, wanted) < Sum(now, wanted) && Miss.Of(plan.After, wanted).Squared < Miss.Of(now, wanted).Squared);
    }, iter: 200);

    [Fact]
    public void Rounded_set_is_nearer_to_what_is_wanted_and_no_farther_apart_or_nothing() => Gen.Select(Around.Array[2, 3], Around, Gen.Int[0, 7], Gen.Bool).Sample((all, other, given, same) =>
    {
        Body[] now = same ? [.. all.Select((_, i) => all[0] with { SwingWeight = all[0].SwingWeight + (0.2 * i) })] : all;
        var wanted = Given(other, given);
        var plans = HalfGramTests.Steps([.. now.Select(body => new PlanFrame(body, Few))], wanted);
        Body[] after = [.. plans.Select(plan => plan.After)];
        return plans.All(plan => plan.Masses.Count == 0) || (
            (given == 0 ? Range(after) < Range(now) : after.Sum(body => Sum(body, wanted)) < now.Sum(body => Sum(body, wanted)) + 1e-5)
            && Range(after) <= Range(now) + 0.1);
    }, iter: 100);

    [Fact]
    public void Set_of_which_one_frame_is_heavier_than_wanted_is_not_made_as_heavy()
    {
        PlanFrame[] frames = [new(new Body(317, 31.4, 325), Few), new(new Body(334, 31.4, 330), Few), new(new Body(318, 31.5, 326), Few)];
        var wanted = new Wanted { MassG = 320 };

        var plans = HalfGramTests.Steps(frames, wanted);

        // The two that can come to what was asked for do; nothing takes weight off the third.
        Assert.Equal([320, 334, 320], plans.Select(plan => plan.After.MassG));
        Assert.Empty(plans[1].Masses);
    }

    [Fact]
    public void Matched_pair_stays_matched_when_it_is_given_another_weight()
    {
        PlanFrame[] frames = [new(new Body(310, 31.5, 310), Few), new(new Body(310, 31.53, 310), Few)];
        var wanted = new Wanted { MassG = 317.1, BalanceCm = 31.04 };

        var plans = HalfGramTests.Steps(frames, wanted);

        Assert.All(plans, plan => Assert.InRange(plan.After.MassG, 316, 318));
        Assert.InRange(Range([.. plans.Select(plan => plan.After)]), 0, 0.4);
    }

    private static Plan Nearest(Plan plan, Wanted goal) => Rounding.Near(plan, goal, 0.5, 1)[0] is var grams
        ? plan with { AddedG = grams[..plan.AddedG.Count], RemovedG = grams[plan.AddedG.Count..] }
        : plan;

    private static readonly Gen<Body> Around = Gen.Select(Gen.Double[310, 334], Gen.Double[31, 33], Gen.Double[305, 335]).Select((m, b, s) => new Body(m, b, s));

    private static Wanted Given(Body body, int figures) => new()
    {
        MassG = (figures & 1) > 0 ? body.MassG : null,
        BalanceCm = (figures & 2) > 0 ? body.BalanceCm : null,
        SwingWeight = (figures & 4) > 0 ? body.SwingWeight : null,
    };

    private static double Sum(Body body, Wanted wanted) =>
        Math.Abs(body.MassG - (wanted.MassG ?? body.MassG)) + (10 * Math.Abs(body.BalanceCm - (wanted.BalanceCm ?? body.BalanceCm))) + Math.Abs(body.SwingWeight - (wanted.SwingWeight ?? body.SwingWeight));

    // A gram as a millimetre as one kg·cm².
    private static double Range(Body[] set) => Math.Sqrt(
        Math.Pow(set.Max(body => body.MassG) - set.Min(body => body.MassG), 2)
        + Math.Pow(10 * (set.Max(body => body.BalanceCm) - set.Min(body => body.BalanceCm)), 2)
        + Math.Pow(set.Max(body => body.SwingWeight) - set.Min(body => body.SwingWeight), 2));

    private static readonly FramePlace[] Few = [.. PlannerTests.Places.Where(place => place.AtCm is 0 or 18 or 53 or 68.5)];

    private static readonly Gen<double[]> Near = Gen.Double[-0.4, 0.4].Array[7];

    // By up to 2.8 g, wherever they are.
    private static Body Changed(double[] grams) => Racket.With(PlannerTests.Places.Zip(grams, (place, g) => place.Carrying(g)));

    private static double Apart(Body one, Body other) => Miss.Of(one, Wanted.Of(other)).Squared;

    // Every combination, straight from the definition.
    private static double Least(Plan plan, Wanted wanted)
    {
        double[][] ways = [[]];
        foreach (var (grams, place) in plan.AddedG.Zip(plan.Frame.Places))
        {
            var step = place.Paired ? 1 : 0.5;
            double[] near = grams < 1e-9 ? [0] : [.. Enumerable.Range(-1, 4).Select(i => (Math.Floor(Math.Round(grams / step, 9)) + i) * step)
                .Where(g => g >= 0 && g <= place.MostG && g < grams + (2 * step) - 1e-9)];
            ways = [.. ways.SelectMany(_ => near, (way, g) => (double[])[.. way, g])];
        }
        return ways.Min(way => Miss.Of((plan with { AddedG = way }).After, wanted).Squared);
    }

    private static readonly Gen<double[]> Limited = Gen.Double[0, 8].Array[7];
}
