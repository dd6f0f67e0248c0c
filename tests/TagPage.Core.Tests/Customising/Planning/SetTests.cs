using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Core.Tests.Customising.Planning;

public class SetTests
{
    private static readonly Body[] Three = [new(303.2, 32.1, 289), new(305.9, 31.8, 291), new(301.4, 32.4, 294)];

    [Fact]
    public void Three_frames_become_the_same_with_the_least_mass()
    {
        // Recomputed independently with SciPy's linear programming.
        var plans = Plan(Three, new Wanted());

        Assert.Equal(13.550103, plans.Sum(plan => plan.TotalG), 5);
        Assert.All(plans, plan => Assert.True(IsNear(plans[0].After, plan.After)));
    }

    [Fact]
    public void Common_target_may_be_wanted_in_part()
    {
        var plans = Plan(Three, new Wanted { MassG = 312 });

        Assert.All(plans, plan => Assert.Equal(312, plan.After.MassG, 6));
        Assert.All(plans, plan => Assert.True(IsNear(plans[0].After, plan.After)));
        Assert.Equal((3 * 312) - Three.Sum(body => body.MassG), plans.Sum(plan => plan.TotalG), 6);
    }

    [Fact]
    public void Frames_that_are_alike_need_nothing() =>
        Assert.All(Plan([Three[0], Three[0]], new Wanted()), plan => Assert.Equal(0, plan.TotalG));

    [Fact]
    public void Order_of_the_frames_does_not_matter() =>
        Assert.Equal(13.550103, Plan([Three[2], Three[0], Three[1]], new Wanted()).Sum(plan => plan.TotalG), 5);

    [Fact]
    public void Set_that_cannot_reach_what_is_wanted_still_becomes_the_same()
    {
        var wanted = new Wanted { MassG = 304, SwingWeight = 305 };

        var plans = Plan(Three, wanted);

        Assert.NotEqual(Figures.None, Miss.Of(plans[0].After, wanted).Figures);
        Assert.All(plans, plan => Assert.True(IsNear(plans[0].After, plan.After)));
    }

    [Fact]
    public void Frames_that_cannot_become_the_same_come_as_near_as_they_can()
    {
        FramePlace[] butt = [new("Butt cap", 0)];

        var (target, plans) = Planner.Common([new PlanFrame(new Body(300, 32, 290), butt), new PlanFrame(new Body(303, 32, 289), butt)], new Wanted { MassG = 303 });

        // By hand: three grams in the butt cap would cost 3.2 mm of balance and 0.3 kg·cm².
        Assert.Equal((300.0, 303.0), (plans[0].After.MassG, plans[1].After.MassG));
        Assert.Equal(303, target.MassG, 6);
    }

    [Fact]
    public void New_frame_is_matched_to_an_old_one()
    {
        var plan = Planner.Nearest([new PlanFrame(Three[0], PlannerTests.Places)], Wanted.Of(Three[0].With(new AddedMass(4, 8), new AddedMass(2, 53))))[0];

        Assert.Equal(6, plan.TotalG, 6);
    }

    [Fact]
    public void Six_frames_are_planned_within_a_moment()
    {
        Body[] six = [.. Three, .. Three.Select(body => body with { MassG = body.MassG + 2.3, SwingWeight = body.SwingWeight + 4 })];
        var before = System.Diagnostics.Stopwatch.GetTimestamp();

        var plans = Plan(six, new Wanted());

        Assert.All(plans, plan => Assert.True(IsNear(plans[0].After, plan.After)));
        Assert.InRange(System.Diagnostics.Stopwatch.GetElapsedTime(before).TotalSeconds, 0, 20);
    }

    private static IReadOnlyList<Plan> Plan(Body[] bodies, Wanted wanted) =>
        Planner.Nearest([.. bodies.Select(body => new PlanFrame(body, PlannerTests.Places))], wanted);

    private static bool IsNear(Body a, Body b) => Miss.Of(a, Wanted.Of(b)).Figures == Figures.None;
}
