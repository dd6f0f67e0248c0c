using CsCheck;
using TagPage.Core.EventDesk;

namespace TagPage.Core.Tests.EventDesk;

/// <summary>Rackets whose match was too early to be promised: the earliest needed comes first as long as every promise is kept.</summary>
public class NeededFirstTests
{
    private static readonly DeskEntry Idle = Court.Racket(1, 30) with { Promised = Court.At(100) };

    private static readonly DeskEntry Missing = Court.Racket(2, 30, 40) with { Promised = Court.At(130) };

    [Fact]
    public void New_racket_that_is_needed_earlier_goes_before_those_that_can_wait()
    {
        var desk = Court.Desk(1, [Promised(1, 200), Promised(2, 150), Promised(3, 90)]);
        var wish = Court.Racket(4, 30, 100);

        var after = desk.With(wish with { Promised = desk.PromiseFor(wish) });

        Assert.Equal((Court.At(100), "3 4 2 1"), (after.Entries[^1].Promised, Order(after)));
        Assert.Empty(desk.Slips(after));
    }

    [Fact]
    public void Racket_promised_after_its_match_goes_first_once_that_makes_nobody_late() =>
        Assert.Equal("2 1", Order(Court.Desk(1, [Idle, Missing])));

    [Fact]
    public void It_waits_for_what_was_promised_to_others() =>
        Assert.Equal("1 2", Order(Court.Desk(1, [Idle with { Promised = Court.At(45) }, Missing])));

    [Fact]
    public void Of_two_that_are_needed_at_the_same_time_the_second_does_not_take_the_match_from_the_first()
    {
        Assert.Equal("2 3", Order(Court.Desk(1, [Missing, Missing with { Number = 3 }])));
        Assert.Equal("1 2 3", Order(Court.Desk(1, [Idle with { Promised = Court.At(35) }, Missing, Missing with { Number = 3 }])));
    }

    [Fact]
    public void Of_two_whose_matches_cannot_both_be_reached_the_earlier_one_goes_first() =>
        Assert.Equal("3 2", Order(Court.Desk(1, [Missing, Missing with { Number = 3, NeededBy = Court.At(35) }])));

    [Fact]
    public void It_comes_as_near_to_its_match_as_the_promises_allow() =>
        Assert.Equal("1 2 3", Order(Court.Desk(1, [Court.Racket(1, 20, 30), Missing, Promised(3, 120)])));

    [Fact]
    public void It_goes_first_also_where_it_would_be_on_time_anyway() =>
        Assert.Equal("2 1", Order(Court.Desk(1, [Idle, Missing with { NeededBy = Court.At(95) }])));

    [Fact]
    public void Nobody_is_later_than_in_the_order_of_what_was_promised() =>
        Promises.Sample((rackets, technicians) =>
        {
            var desk = Court.Desk(technicians, rackets);
            var promised = new DeskPlan(desk.Now, desk.Technicians, rackets);
            return rackets.All(racket => Late(desk.Plan.ReadyAt(racket.Number), racket) <= Late(promised.ReadyAt(racket.Number), racket));
        }, iter: 200);

    [Fact]
    public void A_promise_given_among_them_keeps_all_earlier_promises() =>
        Promises.Sample((rackets, technicians) =>
        {
            var desk = Court.Desk(technicians, rackets);
            var wish = Court.Racket(90, 25, 120);
            var after = desk.With(wish with { Promised = desk.PromiseFor(wish) });
            var promised = new DeskPlan(desk.Now, desk.Technicians, rackets);
            return after.Plan.ReadyAt(90) <= after.Entries[^1].Promised
                && rackets.Where(racket => promised.ReadyAt(racket.Number) <= racket.Promised).All(racket => after.Plan.ReadyAt(racket.Number) <= racket.Promised);
        }, iter: 100);

    private static DeskEntry Promised(int number, int minute) => Court.Racket(number, 30) with { Promised = Court.At(minute) };

    private static string Order(Desk desk) => string.Join(' ', desk.Plan.Placements.Select(placed => placed.Number));

    private static TimeSpan Late(DateTime? ready, DeskEntry racket) => ready > racket.Promised ? ready.Value - racket.Promised.Value : TimeSpan.Zero;

    private static readonly Gen<(DeskEntry[], int)> Promises =
        Gen.Select(Gen.Int[5, 50], Gen.Nullable(Gen.Int[0, 300]), Gen.Int[0, 400]).Array[1, 25].Select(Gen.Int[1, 4])
            .Select((rackets, technicians) => (rackets.Select((racket, at) => Court.Racket(at + 1, racket.Item1, racket.Item2) with { Promised = Court.At(racket.Item3) }).ToArray(), technicians));
}
