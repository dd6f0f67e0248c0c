using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Core.Sports;

namespace TagPage.Core.Tests.Customising.Planning;

public class PlannerTests
{
    // The check values were worked out with the last place at the tip of a frame of 68.5 cm.
    internal static readonly FramePlace[] Places =
        [.. StartingPlaces.Of(Sport.Tennis).Select(place => place.AtCm > 67 ? place with { AtCm = 68.5 } : place)];

    private static readonly Body Measured = new(300, 32, 290);

    // Recomputed independently with SciPy's linear programming; the masses need not be unique, their sum is.
    [Theory]
    [InlineData(312, 32.2, 312, 12)]
    [InlineData(318, 31.5, 305, 18)]
    public void Target_is_reached_with_the_least_mass(double mass, double balance, double swing, double total)
    {
        var wanted = Want(mass, balance, swing);

        var plan = Nearest(wanted);

        Assert.Equal(Figures.None, Miss.Of(plan.After, wanted).Figures);
        Assert.Equal(total, plan.TotalG, 6);
        Assert.Equal(0, plan.TwistChange, 6);
    }

    // The published masses reach the same targets.
    [Theory]
    [InlineData(312, 32.2, 312, 0, 3.9314, 8, 1.7570, 68.5, 6.3116)]
    [InlineData(318, 31.5, 305, 8, 13.1837, 35, 0.5489, 68.5, 4.2674)]
    public void Published_masses_reach_them_too(double mass, double balance, double swing, double at1, double g1, double at2, double g2, double at3, double g3)
    {
        var after = Measured.With(new AddedMass(g1, at1), new AddedMass(g2, at2), new AddedMass(g3, at3));

        Assert.Equal((mass, balance, swing), (Math.Round(after.MassG, 3), Math.Round(after.BalanceCm, 3), Math.Round(after.SwingWeight, 2)));
    }

    [Fact]
    public void Forty_more_swing_weight_with_five_grams_cannot_be_reached()
    {
        // Recomputed independently with SciPy's linear programming: no solution.
        var wanted = Want(305, 32, 330);

        Assert.Null(Planner.IfOnly(Figures.None, new PlanFrame(Measured, Places), wanted));
        Assert.NotEqual(Figures.None, Miss.Of(Nearest(wanted).After, wanted).Figures);
    }

    [Fact]
    public void What_cannot_be_reached_says_which_figure_gives_way_and_by_how_much()
    {
        var (frame, wanted) = (new PlanFrame(Measured, Places), Want(305, 32, 330));

        // By hand: five grams at butt cap and tip that keep the balance are 2.664 and 2.336 g, and swing 8.260.
        var swing = Miss.Of(Planner.IfOnly(Figures.SwingWeight, frame, wanted)!.After, wanted);
        Assert.Equal((Figures.SwingWeight, -31.740), (swing.Figures, Math.Round(swing.SwingWeight, 3)));

        // By hand: five grams at the tip are all there is: 0.005 · 58.5² = 17.111 of the 40 wanted.
        Assert.Null(Planner.IfOnly(Figures.Balance, frame, wanted));

        var mass = Miss.Of(Planner.IfOnly(Figures.Mass, frame, wanted)!.After, wanted);
        Assert.Equal(Figures.Mass, mass.Figures);
        Assert.InRange(mass.MassG, 10, 25);
    }

    [Fact]
    public void Figure_that_is_not_wanted_may_be_anything()
    {
        // By hand: 20 more swing weight are cheapest at the tip, 20 / 58.5² kg.
        var plan = Nearest(new Wanted { SwingWeight = 310 });

        Assert.Equal(20 / (58.5 * 58.5) * 1000, plan.TotalG, 6);
        Assert.Equal(plan.TotalG, plan.AddedG[^1], 9);
    }

    [Fact]
    public void Racket_that_measures_what_is_wanted_needs_nothing() =>
        Assert.Equal(0, Nearest(Want(300, 32, 290)).TotalG);

    [Fact]
    public void Locks_are_kept()
    {
        FramePlace[] handle = [.. Places.Where(place => place.AtCm <= 18)];

        var plan = Planner.Nearest([new PlanFrame(Measured, handle)], new Wanted { MassG = 310 })[0];

        Assert.Equal(310, plan.After.MassG, 9);
        Assert.Equal(3, plan.AddedG.Count);
    }

    [Fact]
    public void At_most_six_grams_at_twelve_is_kept()
    {
        FramePlace[] limited = [.. Places.Select(place => place.AtCm > 67 ? place with { MostG = 6 } : place)];
        var wanted = Want(312, 32.2, 312);

        var plan = Planner.Nearest([new PlanFrame(Measured, limited)], wanted)[0];

        Assert.True(plan.AddedG[^1] <= 6 + 1e-9);
        Assert.Equal(Figures.None, Miss.Of(plan.After, wanted).Figures);
        Assert.True(plan.TwistChange > 0);
    }

    [Fact]
    public void What_was_added_earlier_is_taken_off_before_more_is_added()
    {
        AddedMass tape = new(6, 68.5);
        var frame = new PlanFrame(Measured.With(tape), Places) { Removable = [tape] };

        var plan = Planner.Nearest([frame], Wanted.Of(Measured))[0];

        Assert.Equal((0.0, 6.0), (plan.TotalG, plan.RemovedG[0]));
        Assert.True(BodyTests.IsSame(Measured, plan.After));
    }

    [Fact]
    public void Taking_off_comes_before_adding_where_either_would_do()
    {
        // Five grams in the butt cap can be outweighed at the tip, or come off.
        AddedMass butt = new(5, 0);
        var frame = new PlanFrame(Measured.With(butt), Places) { Removable = [butt] };

        var plan = Planner.Nearest([frame], new Wanted { BalanceCm = Measured.BalanceCm })[0];

        Assert.Equal((0.0, 5.0), (Math.Round(plan.TotalG, 4), Math.Round(plan.RemovedG[0], 4)));
    }

    [Fact]
    public void Lighter_racket_than_it_is_cannot_be_reached_by_adding()
    {
        var wanted = new Wanted { MassG = 295 };

        var plan = Nearest(wanted);

        Assert.Equal((0.0, 5.0), (plan.TotalG, Math.Round(Miss.Of(plan.After, wanted).MassG, 6)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.3)]
    public void Weight_that_no_racket_has_is_missed_like_any_other(double mass) =>
        Assert.Equal(300 - mass, Miss.Of(Nearest(new Wanted { MassG = mass }).After, new Wanted { MassG = mass }).MassG, 6);

    [Fact]
    public void Frame_without_any_place_stays_as_it_is() =>
        Assert.Equal(Measured, Planner.Nearest([new PlanFrame(Measured, [])], Want(310, 33, 300))[0].After);

    private static Plan Nearest(Wanted wanted) => Planner.Nearest([new PlanFrame(Measured, Places)], wanted)[0];

    internal static Wanted Want(double mass, double balance, double swing) => new() { MassG = mass, BalanceCm = balance, SwingWeight = swing };
}
