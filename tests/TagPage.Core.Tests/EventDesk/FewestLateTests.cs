using CsCheck;
using TagPage.Core.EventDesk;

namespace TagPage.Core.Tests.EventDesk;

public class FewestLateTests
{
    // The check of the plan for the desk: the 20-minute one is set aside, then none.
    [Fact]
    public void Of_five_rackets_only_the_second_is_set_aside()
    {
        (int, int)[] jobs = [(10, 15), (20, 22), (15, 30), (30, 60), (5, 62)];
        Assert.Equal([1], FewestLate.OnOneMachine(jobs));
        Assert.Equal([2], FewestLate.Heuristic(Court.Desk(1, Court.Rackets(jobs))));
    }

    // The first is from Pinedo, Scheduling (two late, the others end at 16); answers brute-forced outside the project.
    [Theory]
    [InlineData("7 8 4 6 6", "9 17 18 19 21", 2, 16)]
    [InlineData("3 2 1 4 3 2", "6 8 9 9 14 15", 1, 11)]
    [InlineData("25 25 40 25 20 30", "30 60 80 90 105 125", 1, 125)]
    [InlineData("10 12", "5 6", 2, 0)]
    public void Published_examples(string minutes, string due, int late, int onTimeEnd)
    {
        var jobs = Examples.Read(minutes, due);
        var aside = FewestLate.OnOneMachine(jobs);
        Assert.Equal(late, aside.Count);
        Assert.Equal(onTimeEnd, jobs.Where((_, at) => !aside.Contains(at)).Sum(job => job.Minutes));
    }

    [Fact]
    public void Nothing_on_one_machine_is_late_with_fewer_set_aside() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 120]).Array[1, 10].Sample(jobs =>
            FewestLate.OnOneMachine(jobs).Count == Fewest(jobs), iter: 500);

    [Fact]
    public void Those_that_are_kept_are_on_time_on_any_number_of_machines() =>
        Gen.Select(Gen.Select(Gen.Int[1, 40], Gen.Int[1, 120]).Array[1, 20], Gen.Int[1, 4]).Sample((jobs, machines) =>
        {
            var desk = Court.Desk(machines, Court.Rackets(jobs));
            var aside = FewestLate.Heuristic(desk);
            var kept = desk.Entries.Where(entry => !aside.Contains(entry.Number)).ToList();
            return kept.Count == 0 || Court.Desk(machines, kept).Late() == 0;
        });

    // Without the second racket the fourth would start after 5 minutes instead of 8 and still end at 13, two too late.
    [Fact]
    public void Racket_that_nobody_can_make_room_for_is_set_aside_itself() =>
        Assert.Equal([4], FewestLate.Heuristic(Court.Desk(2, Court.Rackets((6, 9), (8, 10), (5, 11), (8, 11)))));

    [Fact]
    public void On_one_machine_the_heuristic_is_the_theorem() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 120]).Array[1, 20].Sample(jobs =>
            FewestLate.Heuristic(Court.Desk(1, Court.Rackets(jobs))).Count == FewestLate.OnOneMachine(jobs).Count);

    [Fact]
    public void What_is_on_a_machine_or_on_court_is_never_set_aside()
    {
        DeskEntry[] entries =
        [
            Court.Racket(1, 60, 30) with { On = new OnMachine(1, Court.Nine) },
            Court.Racket(2, 50, 70) with { OnCourt = true },
            Court.Racket(3, 10, 100),
        ];
        Assert.Equal([3], FewestLate.Heuristic(Court.Desk(1, entries)));
    }

    // Every subset is tried; kept ones in due order are on time if any order is.
    private static int Fewest((int Minutes, int Due)[] jobs) =>
        jobs.Length - Enumerable.Range(0, 1 << jobs.Length)
            .Where(chosen => OnTime(jobs.Where((_, at) => (chosen >> at & 1) == 1).OrderBy(job => job.Due)))
            .Max(chosen => int.PopCount(chosen));

    private static bool OnTime(IEnumerable<(int Minutes, int Due)> order)
    {
        var time = 0;
        return order.All(job => (time += job.Minutes) <= job.Due);
    }
}
