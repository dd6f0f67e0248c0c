using CsCheck;
using TagPage.Core.EventDesk;

namespace TagPage.Core.Tests.EventDesk;

public class PromiseTests
{
    [Fact]
    public void A_match_that_can_be_reached_is_the_promise() =>
        Assert.Equal(Court.At(200), Court.Desk(1, []).PromiseFor(Court.Racket(1, 30, 200)));

    [Fact]
    public void Without_a_match_the_promise_is_the_earliest_that_makes_nobody_late()
    {
        var desk = Court.Desk(1, [Court.Racket(1, 30, 30), Court.Racket(2, 30, 70)]);
        Assert.Equal(Court.At(85), desk.PromiseFor(Court.Racket(3, 22)));
        Assert.Equal(Court.At(40), desk.PromiseFor(Court.Racket(3, 10)));
    }

    [Fact]
    public void A_wish_that_cannot_be_kept_names_those_who_would_slip()
    {
        var desk = Court.Desk(1, [Court.Racket(1, 30, 30), Court.Racket(2, 30, 60), Court.Racket(3, 30, 200)]);
        var slip = Assert.Single(desk.Slips(Court.Racket(4, 22, 58)));
        Assert.Equal((2, Court.At(60), Court.At(60), Court.At(82)), (slip.Number, slip.Due, slip.Before, slip.After));
        Assert.Equal(Court.At(85), desk.PromiseFor(Court.Racket(4, 22, 58)));
    }

    [Fact]
    public void What_cannot_be_strung_in_the_hours_there_are_gets_no_promise()
    {
        var desk = new Desk(Court.Nine, Court.Technicians(1, hours: 1), [Court.Racket(1, 40, 40)]);
        Assert.Null(desk.PromiseFor(Court.Racket(2, 30)));
        Assert.Equal(Court.At(60), desk.PromiseFor(Court.Racket(2, 20)));
    }

    [Fact]
    public void On_court_goes_first_and_names_whom_it_makes_late()
    {
        var onCourt = Court.Racket(3, 25) with { OnCourt = true };
        var desk = Court.Desk(1, [Court.Racket(1, 30, 30), Court.Racket(2, 30, 100)]);
        Assert.Equal(Court.At(25), desk.PromiseFor(onCourt));
        Assert.Equal([1], desk.Slips(onCourt).Select(slip => slip.Number));
    }

    [Fact]
    public void Pulled_forward_names_whom_it_makes_late_and_not_itself()
    {
        var pulled = Court.Racket(3, 30, 300);
        var desk = Court.Desk(1, [Court.Racket(1, 30, 30), Court.Racket(2, 30, 95), pulled]);
        Assert.Equal([1], desk.Slips(pulled with { PulledForward = true }).Select(slip => slip.Number));
    }

    [Fact]
    public void One_who_is_late_already_suffers_when_it_gets_worse()
    {
        var desk = Court.Desk(1, [Court.Racket(1, 30, 10)]);
        Assert.Equal([1], desk.Slips(Court.Racket(2, 5, 5)).Select(slip => slip.Number));
    }

    [Fact]
    public void A_promise_given_keeps_all_earlier_promises() =>
        Desks.Sample((wishes, technicians) =>
        {
            var desk = Court.Desk(technicians, []);
            foreach (var wish in wishes)
            {
                var kept = OnTime(desk);
                desk = desk.With(wish with { Promised = desk.PromiseFor(wish) });
                if (kept.Except(OnTime(desk)).Any() || desk.Plan.ReadyAt(wish.Number) > desk.Entries[^1].Promised)
                    return false;
            }
            return true;
        }, iter: 60);

    [Fact]
    public void No_earlier_step_could_have_been_promised() =>
        Desks.Sample((wishes, technicians) =>
        {
            var desk = Court.Desk(technicians, [.. wishes.Skip(1).Select(wish => wish with { Promised = wish.NeededBy })]);
            var entry = wishes[0] with { NeededBy = null };
            var tried = Enumerable.Range(0, 400).Select(step => Court.At(step * Desk.StepMinutes)).First(promise =>
            {
                var after = desk.With(entry with { Promised = promise });
                return after.Plan.ReadyAt(entry.Number) <= promise && desk.Slips(after).Count == 0;
            });
            return desk.EarliestPromise(entry) == tried;
        }, iter: 40);

    // What is begun is begun; the rest is planned again every few minutes.
    [Fact]
    public void Work_that_goes_as_planned_keeps_the_plan() =>
        Desks.Sample((wishes, technicians) =>
        {
            var plan = Court.Desk(technicians, wishes).Plan;
            return Enumerable.Range(0, 12).Select(step => step * 17).All(now =>
            {
                var open = wishes.Where(wish => plan.ReadyAt(wish.Number) > Court.At(now)).Select(wish =>
                    plan.Of(wish.Number)!.Start <= Court.At(now)
                        ? wish with { On = new OnMachine(plan.Of(wish.Number)!.Technician, plan.Of(wish.Number)!.Start) }
                        : wish).ToList();
                var later = Court.Desk(technicians, open, now).Plan;
                return open.All(wish => later.Of(wish.Number) == plan.Of(wish.Number));
            });
        }, iter: 100);

    [Fact]
    public void Everything_moves_together_after_rain() =>
        Desks.Sample((wishes, technicians) =>
        {
            var rain = TimeSpan.FromMinutes(75);
            var before = Court.Desk(technicians, wishes).Plan;
            var after = Court.Desk(technicians, [.. wishes.Select(wish => wish.Shifted(rain))], 75).Plan;
            return wishes.All(wish => after.ReadyAt(wish.Number) == before.ReadyAt(wish.Number) + rain);
        }, iter: 50);

    private static List<int> OnTime(Desk desk) =>
        [.. desk.Entries.Where(entry => desk.Plan.ReadyAt(entry.Number) <= entry.Due).Select(entry => entry.Number)];

    private static readonly Gen<(DeskEntry[], int)> Desks =
        Gen.Select(Gen.Int[5, 50], Gen.Nullable(Gen.Int[0, 300]), Gen.Nullable(Gen.Int[0, 120], 0.7), Gen.Nullable(Gen.Int[1, 30], 0.8))
            .Array[1, 25].Select(Gen.Int[1, 4])
            .Select((rackets, technicians) => (rackets.Select((racket, at) => Court.Racket(at + 1, racket.Item1, racket.Item2) with
            {
                NotBefore = racket.Item3 is { } fresh ? Court.At(fresh) : null,
                KeptFor = racket.Item4 is { } kept ? 1 + (kept % technicians) : null,
            }).ToArray(), technicians));
}
