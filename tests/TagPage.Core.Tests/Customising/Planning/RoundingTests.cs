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
        Assert.Equal([5.5, 3.5], Rounding.Rounded(plan, Wanted.Of(plan.After), 0.5).AddedG);
    }

    [Fact]
    public void Piece_at_a_limit_between_two_steps_is_cut_below_it()
    {
        var plan = new Plan(new PlanFrame(Racket, [new FramePlace("Tip", 66) { MostG = 5.3 }]), [5.3], []);

        Assert.Equal([5.0], Rounding.Rounded(plan, Wanted.Of(plan.After), 0.5).AddedG);
    }

    [Fact]
    public void Earlier_piece_that_comes_off_wholly_need_not_be_whole_steps()
    {
        AddedMass earlier = new(5.3, 66);
        var plan = new Plan(new PlanFrame(Racket.With(earlier), []) { Removable = [earlier] }, [], [5.3]);

        Assert.Equal([5.3], Rounding.Rounded(plan, Wanted.Of(plan.After), 0.5).RemovedG);
    }

    [Fact]
    public void Place_that_a_plan_leaves_empty_stays_empty()
    {
        var plan = new Plan(new PlanFrame(Racket, [new FramePlace("Shoulder", 60), new FramePlace("Tip", 66)]), [0, 3.26], []);

        Assert.Equal(0, Rounding.Rounded(plan, Wanted.Of(plan.After), 0.5).AddedG[0]);
    }

    [Fact]
    public void No_combination_a_step_further_on_any_side_misses_less() => Limited.Sample(grams =>
    {
        FramePlace[] places = [.. PlannerTests.Places.Zip(grams, (place, g) => place with { MostG = Math.Round(g) })];
        var frame = new PlanFrame(Racket, places);
        var plan = Planner.Nearest([frame], Wanted.Of(Racket.With(places.Zip(grams, (place, g) => place.Carrying(Math.Min(g, place.MostG))))))[0];
        var wanted = Wanted.Of(plan.After);
        return Math.Abs(Miss.Of(Rounding.Rounded(plan, wanted, 0.5).After, wanted).Squared - Least(plan, wanted)) < 1e-9;
    }, iter: 60);

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
