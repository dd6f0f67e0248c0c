using CsCheck;
using TagPage.Core.EventDesk;

namespace TagPage.Core.Tests.EventDesk;

public class SuggestedOrderTests
{
    // The check of the plan for the desk; finish times and lateness recomputed by hand.
    [Fact]
    public void Five_rackets_on_one_machine_are_ready_in_due_order()
    {
        var desk = Court.Desk(1, Court.Rackets((10, 15), (20, 22), (15, 30), (30, 60), (5, 62)));
        Assert.Equal([10, 30, 45, 75, 80], desk.Plan.Placements.Select(placed => Court.Minute(placed.Ready)));
        Assert.Equal(18, desk.LargestLateness());
        Assert.Equal(4, desk.Late());
    }

    // Pinedo, Scheduling, the textbook's example, and two more; answers brute-forced outside the project.
    [Theory]
    [InlineData("7 8 4 6 6", "9 17 18 19 21", 10)]
    [InlineData("3 2 1 4 3 2", "6 8 9 9 14 15", 1)]
    [InlineData("25 25 40 25 20 30", "30 60 80 90 105 125", 40)]
    public void The_largest_lateness_of_published_examples(string minutes, string due, int largest) =>
        Assert.Equal(largest, Court.Desk(1, Court.Rackets(Examples.Read(minutes, due))).LargestLateness());

    // Jackson 1955 says so; every order is tried.
    [Fact]
    public void No_order_of_up_to_eight_rackets_on_one_machine_has_a_smaller_largest_lateness() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 200]).Array[1, 6].Sample(jobs => Beats(jobs) is false, iter: 300);

    [Fact]
    public void Nor_has_any_order_of_eight() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 200]).Array[8].Sample(jobs => Beats(jobs) is false, iter: 4);

    [Fact]
    public void On_court_goes_first_then_what_was_pulled_forward_then_the_earliest_due_then_the_number()
    {
        DeskEntry[] entries =
        [
            Court.Racket(1, 30), Court.Racket(2, 30, 90), Court.Racket(3, 30, 60), Court.Racket(4, 30, 60),
            Court.Racket(5, 30) with { PulledForward = true }, Court.Racket(6, 30, 300) with { OnCourt = true },
        ];
        Assert.Equal([6, 5, 3, 4, 2, 1], DeskOrder.Suggested(entries).Select(entry => entry.Number));
    }

    [Fact]
    public void A_promise_later_than_the_match_pushes_nobody_aside()
    {
        DeskEntry[] entries = [Court.Racket(1, 30, 40), Court.Racket(2, 30, 20) with { Promised = Court.At(60) }];
        Assert.Equal([1, 2], DeskOrder.Suggested(entries).Select(entry => entry.Number));
    }

    private static bool Beats((int Minutes, int Due)[] jobs)
    {
        var suggested = Court.Desk(1, Court.Rackets(jobs)).LargestLateness();
        return Examples.Orders(jobs).Any(order => Largest(order) < suggested);
    }

    private static int Largest(IEnumerable<(int Minutes, int Due)> order)
    {
        var (time, largest) = (0, int.MinValue);
        foreach (var (minutes, due) in order)
            largest = Math.Max(largest, (time += minutes) - due);
        return largest;
    }
}
