using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>The last move, which one press takes back.</summary>
public sealed class LastMoveTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _first, _second;

    public LastMoveTests() => (_first, _second) = (_street.Records.Job(_street.Racket), _street.Records.Job(_street.Records.Racket(_street.Pim, number: 2)));

    private MoveStore Moves => new(_street.Database, _street.Clock);

    private BackStore Backs => new(_street.Database, _street.Time);

    private BackStore.Last? Last => Backs.LastMove(Who.Shop, _street.Clock.Now.AddHours(-8));

    private JobRow Job(long id) => new JobStore(_street.Database).Get(Who.Shop, id)!;

    private static StrungEntry StrungToday => new() { StrungOn = Street.Today };

    private void Later(int minutes) => _street.Time.Advance(TimeSpan.FromMinutes(minutes));

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Nothing_was_moved_yet()
    {
        Assert.Null(Last);
    }

    [Fact]
    public void Each_move_is_the_last_until_the_next_and_taken_back_the_one_before_is()
    {
        Moves.Start(Who.Shop, _first);
        Later(1);
        Moves.Start(Who.Shop, _second);
        Assert.Equal((JobState.OnMachine, _second), (Last!.State, Assert.Single(Last.Jobs).Id));

        Backs.BackTogether(Who.Shop, [.. Last.Jobs.Select(job => job.Id)], Last.State);

        Assert.Equal((JobState.Waiting, _first), (Job(_second).State, Assert.Single(Last!.Jobs).Id));
    }

    [Fact]
    public void What_was_handed_out_together_is_taken_back_together_and_stays_paid()
    {
        Moves.MarkStrung(Who.Shop, _first, StrungToday);
        Moves.MarkStrung(Who.Shop, _second, StrungToday);
        Later(1);
        new PickUpStore(_street.Database, _street.Clock).Collect(Who.Shop, Party.Client(_street.Odalys), new PickUpEntry
        {
            FormKey = FormKey.New(),
            CollectedOn = Street.Today,
            Jobs = [_first, _second],
            Payment = new PaymentEntry { PaidOn = Street.Today, Method = Core.Money.PaymentMethod.Cash },
        });

        Assert.Equal(new Outcome.Done(_first), Backs.BackTogether(Who.Shop, [.. Last!.Jobs.Select(job => job.Id)], JobState.Collected));

        Assert.All([Job(_first), Job(_second)], job => Assert.Equal((JobState.Strung, null, Street.Today), (job.State, job.CollectedOn, job.PaidOn!.Value)));
    }

    [Fact]
    public void One_that_moved_on_keeps_the_others_where_they_are()
    {
        Moves.Start(Who.Shop, _first);
        Moves.MarkStrung(Who.Shop, _second, StrungToday);

        Assert.Equal(Job(_second).Ticket, _street.Refused<JobMovedOn>(() => Backs.BackTogether(Who.Shop, [_first, _second], JobState.OnMachine)).Ticket);
        Assert.IsType<Outcome.Absent>(Backs.BackTogether(Who.Shop, [_first, 99], JobState.OnMachine));
        Assert.Equal(JobState.OnMachine, Job(_first).State);
    }

    [Fact]
    public void Yesterdays_move_and_a_cancelled_ticket_are_not_offered()
    {
        Moves.Start(Who.Shop, _first);
        Later(9 * 60);
        Assert.Null(Last);
        Moves.Start(Who.Shop, _second);
        Moves.Cancel(Who.Shop, _second);
        Assert.Null(Last);
    }

    [Fact]
    public void Minutes_from_start_to_strung_teach_by_kind_of_job()
    {
        Moves.Start(Who.Shop, _first);
        Later(48);
        Moves.MarkStrung(Who.Shop, _first, StrungToday);

        var learned = new JobMinutesStore(_street.Database).Learned();

        // Three assumed rackets of 30 minutes and one of 48: (90 + 48) / 4 = 34.5, rounded up.
        Assert.Equal((35, 30), (learned.Of(Job(_first)), learned.Of(Job(_first) with { CrossesId = 99 })));
    }

    [Fact]
    public void Stringing_that_is_typed_in_later_teaches_nothing()
    {
        Moves.Start(Who.Shop, _first);
        Later(48);
        Moves.MarkStrung(Who.Shop, _first, StrungToday with { StrungOn = Street.Today.AddDays(-1) });
        Moves.MarkStrung(Who.Shop, _second, StrungToday);

        Assert.Empty(new JobMinutesStore(_street.Database).Learned().Learned);
    }

    [Fact]
    public void Start_that_was_taken_back_begins_anew_and_a_stringing_taken_back_goes_on()
    {
        Moves.Start(Who.Shop, _first);
        Later(20);
        Backs.Back(Who.Shop, _first, JobState.OnMachine);
        Assert.Null(Job(_first).StartedAt);

        Moves.Start(Who.Shop, _first);
        var started = Job(_first).StartedAt;
        Later(25);
        Moves.MarkStrung(Who.Shop, _first, StrungToday);
        Backs.Back(Who.Shop, _first, JobState.Strung);

        Assert.Equal((started, null), (Job(_first).StartedAt, Job(_first).StrungAt));
    }

    [Fact]
    public void Racket_on_the_machine_takes_what_is_left_of_its_minutes()
    {
        Moves.Start(Who.Shop, _first);
        var learned = new JobMinutesStore(_street.Database).Learned();

        Later(12);
        Assert.Equal(18, learned.Left(Job(_first), _street.Clock.Now));
        Later(40);
        Assert.Equal((5, 30), (learned.Left(Job(_first), _street.Clock.Now), learned.Left(Job(_second), _street.Clock.Now)));
    }

    [Fact]
    public void Of_two_tablets_that_start_the_same_racket_one_gets_it_and_the_other_is_told()
    {
        var outcomes = new Outcome[2];
        Parallel.For(0, 2, tablet => outcomes[tablet] = Moves.Start(Who.Shop, _first));

        Assert.Single(outcomes, new Outcome.Done(_first));
        Assert.Single(outcomes, new Outcome.Refused(new JobMovedOn(Job(_first).Ticket, JobState.OnMachine)));
        Assert.Equal(2, Job(_first).Version);
    }
}
