using TagPage.Core.EventDesk;
using TagPage.Core.Sports;

namespace TagPage.Core.Tests.EventDesk;

public class DeskPlanTests
{
    // Graham 1966/1969; answers brute-forced outside the project. The last reaches the bound 2 - 1/m exactly.
    [Theory]
    [InlineData("4 5 6 7 8", 2, 18)]
    [InlineData("4 5 6 7 8", 3, 13)]
    [InlineData("1 1 1 1 1 1 3", 3, 5)]
    [InlineData("3 1 1 1 1 1 1", 3, 3)]
    public void List_scheduling_of_published_examples(string minutes, int machines, int makespan)
    {
        var rackets = Examples.Numbers(minutes).Select((takes, at) => Court.Racket(at + 1, takes)).ToList();
        Assert.Equal(makespan, Court.Desk(machines, rackets).Plan.Placements.Max(placed => Court.Minute(placed.Ready)));
    }

    [Fact]
    public void Nobody_starts_what_cannot_be_finished_before_the_break()
    {
        var hours = WorkTime.Between([Hours(0, 240)], [Hours(50, 80)]);
        var plan = new DeskPlan(Court.Nine, [new Technician(1, hours)], [Court.Racket(1, 30, 10), Court.Racket(2, 30, 20), Court.Racket(3, 20, 30)]);
        Assert.Equal([(1, 0), (3, 30), (2, 80)], Starts(plan));
    }

    [Fact]
    public void What_the_hours_do_not_suffice_for_has_no_place()
    {
        var plan = new DeskPlan(Court.Nine, [new Technician(1, [Hours(0, 45)])], [Court.Racket(1, 30), Court.Racket(2, 30)]);
        Assert.Equal(Court.At(30), plan.ReadyAt(1));
        Assert.Null(plan.ReadyAt(2));
    }

    [Fact]
    public void A_racket_to_be_fresh_waits_and_another_fills_the_gap()
    {
        var fresh = Court.Racket(1, 30, 100) with { NotBefore = Court.At(60) };
        var plan = Court.Desk(1, [fresh, Court.Racket(2, 30, 200), Court.Racket(3, 40, 210)]).Plan;
        Assert.Equal([(2, 0), (1, 60), (3, 90)], Starts(plan));
    }

    [Fact]
    public void A_technician_kept_for_a_player_gets_their_racket_and_nobody_else_does()
    {
        var kept = Court.Racket(2, 30, 20) with { KeptFor = 2 };
        var plan = Court.Desk(2, [Court.Racket(1, 30, 10), kept, Court.Racket(3, 30, 15) with { KeptFor = 2 }]).Plan;
        Assert.Equal((2, Court.At(0)), (plan.Of(3)!.Technician, plan.Of(3)!.Start));
        Assert.Equal((2, Court.At(30)), (plan.Of(2)!.Technician, plan.Of(2)!.Start));
        Assert.Null(Court.Desk(1, [kept]).Plan.Of(2));
    }

    [Fact]
    public void Break_that_begins_while_a_racket_is_on_the_machine_is_waited_for()
    {
        var started = Court.Racket(1, 30) with { On = new OnMachine(1, Court.At(10)) };
        var hours = WorkTime.Between([Hours(0, 240)], [Hours(20, 40)]);
        var plan = new DeskPlan(Court.At(20), [new Technician(1, hours)], [started, Court.Racket(2, 30, 100)]);
        Assert.Equal((Court.At(60), Court.At(60)), (plan.ReadyAt(1), plan.Of(2)!.Start));

        // Begun in the break: they did not wait for it. Before it, it is done.
        Assert.Equal(Court.At(60), new DeskPlan(Court.At(30), [new Technician(1, hours)], [started with { On = new OnMachine(1, Court.At(30)) }]).ReadyAt(1));
        Assert.Equal(Court.At(20), new DeskPlan(Court.At(5), [new Technician(1, hours)], [started with { On = new OnMachine(1, Court.At(-10)) }]).ReadyAt(1));
    }

    [Fact]
    public void Racket_that_is_overdue_when_the_break_begins_is_ready_after_it_and_one_begun_in_the_break_is_not_kept_waiting()
    {
        var started = Court.Racket(1, 30) with { On = new OnMachine(1, Court.At(10)) };
        var runa = new Technician(1, WorkTime.Between([Hours(0, 240)], [Hours(50, 80)]));

        Assert.Equal(Court.At(49), new DeskPlan(Court.At(49), [runa], [started]).ReadyAt(1));
        var waits = new DeskPlan(Court.At(50), [runa], [started, Court.Racket(2, 30)]);
        Assert.Equal((Court.At(80), Court.At(80)), (waits.ReadyAt(1), waits.Of(2)!.Start));
        Assert.Equal(Court.At(80), new DeskPlan(Court.At(79), [runa], [started]).ReadyAt(1));
        Assert.Equal(Court.At(95), new DeskPlan(Court.At(95), [runa], [started]).ReadyAt(1));

        var quick = Court.Racket(3, 10) with { On = new OnMachine(1, Court.At(55)) };
        Assert.Equal(Court.At(70), new DeskPlan(Court.At(70), [runa], [quick]).ReadyAt(3));
    }

    [Fact]
    public void Night_is_no_break_to_wait_for()
    {
        var runa = new Technician(1, [Hours(0, 60), Hours(24 * 60, 25 * 60)]);
        var started = Court.Racket(1, 30) with { On = new OnMachine(1, Court.At(10)) };
        Assert.Equal(Court.At(70), new DeskPlan(Court.At(70), [runa], [started]).ReadyAt(1));
    }

    [Fact]
    public void What_is_on_a_machine_stays_there_even_when_it_takes_longer_than_it_should()
    {
        var started = Court.Racket(1, 30) with { On = new OnMachine(1, Court.At(10)) };
        var soon = new DeskPlan(Court.At(20), [Court.Technician(1)], [started, Court.Racket(2, 20, 30)]);
        Assert.Equal([(1, 10), (2, 40)], Starts(soon));
        var overdue = new DeskPlan(Court.At(50), [Court.Technician(1)], [started, Court.Racket(2, 20, 30)]);
        Assert.Equal([(1, 10), (2, 50)], Starts(overdue));
        Assert.Equal(Court.At(50), overdue.ReadyAt(1));
    }

    [Fact]
    public void A_racket_on_the_machine_of_somebody_who_left_keeps_its_time_and_blocks_nobody()
    {
        var started = Court.Racket(1, 30) with { On = new OnMachine(7, Court.Nine) };
        Assert.Equal([(1, 0), (2, 0)], Starts(Court.Desk(1, [started, Court.Racket(2, 20)]).Plan));
    }

    [Fact]
    public void Each_technician_takes_their_own_time()
    {
        var quick = Court.Technician(2) with { Minutes = new Dictionary<Sport, int> { [Sport.Badminton] = 18 } };
        var desk = new Desk(Court.Nine, [Court.Technician(1), quick], [new DeskEntry(1, Sport.Badminton), new DeskEntry(2, Sport.Tennis)]);
        Assert.Equal((2, Court.At(18)), (desk.Plan.Of(1)!.Technician, desk.Plan.Of(1)!.Ready));
        Assert.Equal((1, Court.At(30)), (desk.Plan.Of(2)!.Technician, desk.Plan.Of(2)!.Ready));
    }

    [Fact]
    public void Breaks_may_overlap_and_lie_outside_the_hours()
    {
        var hours = WorkTime.Between([Hours(100, 200), Hours(0, 60)], [Hours(40, 120), Hours(110, 130), Hours(300, 310), Hours(150, 160)]);
        Assert.Equal([Hours(0, 40), Hours(130, 150), Hours(160, 200)], hours);
    }

    private static WorkTime Hours(int from, int to) => new(Court.At(from), Court.At(to));

    private static IEnumerable<(int, int)> Starts(DeskPlan plan) =>
        plan.Placements.Select(placed => (placed.Number, Court.Minute(placed.Start)));
}
