using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

public sealed class MoveStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _old;
    private readonly long _job;

    public MoveStoreTests() => (_old, _job) = (_street.Strung, _street.Records.Job(_street.Racket));

    private MoveStore Moves => new(_street.Database, _street.Clock);

    private BackStore Backs => new(_street.Database, _street.Time);

    private PaymentStore Payments => new(_street.Database, _street.Clock);

    private static PaymentEntry Cash(DateOnly on) => new() { PaidOn = on, Method = PaymentMethod.Cash };

    private JobRow Job(long id) => new JobStore(_street.Database).Get(Who.Shop, id)!;

    private static StrungEntry StrungToday => new() { StrungOn = Street.Today, StrungBy = "Runa", Machine = "lockout" };

    private Outcome Back() => Backs.Back(Who.Shop, _job, Job(_job).State);

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Job_goes_from_waiting_to_collected_and_paid()
    {
        Moves.Start(Who.Shop, _job);
        Assert.Equal(JobState.OnMachine, Job(_job).State);
        Moves.MarkStrung(Who.Shop, _job, StrungToday);
        Assert.Equal((JobState.Strung, Street.Today, "Runa", "lockout"), (Job(_job).State, Job(_job).StrungOn, Job(_job).StrungBy, Job(_job).Machine));
        Moves.Collect(Who.Shop, _job, new HandOutEntry { CollectedOn = Street.Today, Payment = Cash(Street.Today) });
        Assert.Equal((JobState.Collected, Street.Today, Street.Today), (Job(_job).State, Job(_job).CollectedOn, Job(_job).PaidOn));
    }

    [Fact]
    public void Move_from_a_state_that_is_no_longer_current_is_refused_and_changes_nothing()
    {
        Moves.MarkStrung(Who.Shop, _job, StrungToday);
        var before = Job(_job);

        Outcome[] outcomes = [Moves.Start(Who.Shop, _job), Moves.MarkStrung(Who.Shop, _job, StrungToday with { StrungBy = "Idris" }), Moves.Cancel(Who.Shop, _job)];

        Assert.All(outcomes, o => Assert.Equal(new Outcome.Refused(new JobMovedOn(before.Ticket, JobState.Strung)), o));
        Assert.Equal(before, Job(_job));
    }

    [Fact]
    public void Stringing_ends_the_strings_before()
    {
        Moves.MarkStrung(Who.Shop, _job, StrungToday with { OldEndedHow = BedEnd.Mishit });

        Assert.Equal((Street.Today, BedEnd.Mishit), (Job(_old).EndedOn, Job(_old).EndedHow));
        Assert.Null(Job(_job).EndedOn);
    }

    [Fact]
    public void An_end_noted_before_stays_as_it_was_noted()
    {
        _street.Database.Write(c => BedStore.End(c, _old, new(2026, 11, 20), BedEnd.Wear));

        Moves.MarkStrung(Who.Shop, _job, StrungToday);

        Assert.Equal((new DateOnly(2026, 11, 20), BedEnd.Wear), (Job(_old).EndedOn, Job(_old).EndedHow));
    }

    [Fact]
    public void Stringing_typed_in_late_has_ended_when_the_next_one_went_in()
    {
        _street.Records.Change("UPDATE job SET received_on = '2026-10-19' WHERE id = @_job", new { _job });

        Moves.MarkStrung(Who.Shop, _job, StrungToday with { StrungOn = new(2026, 10, 20) });

        Assert.Equal((new DateOnly(2026, 11, 1), BedEnd.CutOut), (Job(_job).EndedOn, Job(_job).EndedHow));
        Assert.Null(Job(_old).EndedOn);
    }

    [Fact]
    public void Taking_stringing_back_puts_the_old_strings_in_again_and_keeps_the_reading()
    {
        var gauge = _street.Database.Write(c => Dapper.SqlMapper.ExecuteScalar<long>(c, "INSERT INTO instrument (name, scale) VALUES ('bench gauge', 'Stiffness') RETURNING id"));
        Moves.MarkStrung(Who.Shop, _job, StrungToday with { Reading = 62, InstrumentId = gauge });

        Back();

        Assert.Equal((JobState.OnMachine, null, "Runa", 62m), (Job(_job).State, Job(_job).StrungOn, Job(_job).StrungBy, Job(_job).Reading));
        Assert.Null(Job(_old).EndedOn);
    }

    [Fact]
    public void Taking_stringing_back_leaves_a_break_as_it_was_noted()
    {
        Moves.MarkStrung(Who.Shop, _job, StrungToday with { OldEndedHow = BedEnd.Wear });

        Back();

        Assert.Equal(BedEnd.Wear, Job(_old).EndedHow);
    }

    [Fact]
    public void Strings_that_have_ended_cannot_be_taken_back()
    {
        Moves.MarkStrung(Who.Shop, _job, StrungToday);
        _street.Database.Write(c => BedStore.End(c, _job, Street.Today, BedEnd.Machine));

        Assert.IsType<Outcome.Refused>(Back());
        Assert.Equal(JobState.Strung, Job(_job).State);
    }

    [Fact]
    public void Each_step_back_lands_one_state_earlier()
    {
        Moves.MarkStrung(Who.Shop, _job, StrungToday);
        Moves.Collect(Who.Shop, _job, new HandOutEntry { CollectedOn = Street.Today });

        var states = Enumerable.Range(0, 3).Select(_ => (Back(), Job(_job).State).State).ToList();

        Assert.Equal([JobState.Strung, JobState.OnMachine, JobState.Waiting], states);
        Assert.IsType<Outcome.Refused>(Back());
    }

    [Fact]
    public void Cancelled_ticket_keeps_its_number_and_can_wait_again()
    {
        var ticket = Job(_job).Ticket;
        Moves.Cancel(Who.Shop, _job);
        Assert.Equal((JobState.Cancelled, ticket), (Job(_job).State, Job(_job).Ticket));

        Back();

        Assert.Equal((JobState.Waiting, ticket), (Job(_job).State, Job(_job).Ticket));
    }

    [Fact]
    public void Paying_twice_is_told_and_keeps_the_first_day()
    {
        Payments.PayJob(Who.Shop, _job, Cash(new(2026, 11, 24)));

        var second = Payments.PayJob(Who.Shop, _job, Cash(Street.Today));

        Assert.Equal(new Outcome.Refused(new PaidAlready(Job(_job).Ticket, new(2026, 11, 24))), second);
        Assert.Equal(new DateOnly(2026, 11, 24), Job(_job).PaidOn);
        Payments.TakeBack(Who.Shop, Payments.OfJob(Who.Shop, _job)[0].Id);
        Assert.Null(Job(_job).PaidOn);
    }

    [Fact]
    public void Paid_beforehand_keeps_its_day_when_the_racket_is_handed_out()
    {
        Payments.PayJob(Who.Shop, _job, Cash(new(2026, 11, 24)));
        Moves.MarkStrung(Who.Shop, _job, StrungToday);

        Moves.Collect(Who.Shop, _job, new HandOutEntry { CollectedOn = Street.Today, Payment = Cash(Street.Today) });

        Assert.Equal(new DateOnly(2026, 11, 24), Job(_job).PaidOn);
    }

    [Theory]
    [InlineData(JobState.Waiting)]
    [InlineData(JobState.OnMachine)]
    [InlineData(JobState.Strung)]
    public void Racket_that_was_still_to_be_brought_came_in_when_it_was_first_handled(JobState to)
    {
        _street.Records.Change("INSERT INTO job_request (job_id, asked_in, asked_words) VALUES (@_job, 'Reminder', 'softer')", new { _job });
        Assert.True(Job(_job).Expected);

        _ = to switch
        {
            JobState.Waiting => Moves.Receive(Who.Shop, _job),
            JobState.OnMachine => Moves.Start(Who.Shop, _job),
            _ => Moves.MarkStrung(Who.Shop, _job, StrungToday),
        };

        var job = Job(_job);
        Assert.Equal((to, false, Street.Today, "softer"), (job.State, job.Expected, job.ReceivedOn, job.AskedWords));
    }

    [Fact]
    public void Racket_that_was_brought_keeps_the_day_it_came_in()
    {
        var before = Job(_job);

        Moves.Receive(Who.Shop, _job);
        Assert.Equal(before, Job(_job));
        Moves.Start(Who.Shop, _job);

        Assert.Equal(before.ReceivedOn, Job(_job).ReceivedOn);
    }

    [Fact]
    public void Request_that_was_cancelled_and_taken_back_is_still_to_be_brought()
    {
        _street.Records.Change("INSERT INTO job_request (job_id, asked_in) VALUES (@_job, 'OwnPage')", new { _job });

        Moves.Cancel(Who.Shop, _job);
        Back();

        Assert.Equal((JobState.Waiting, true), (Job(_job).State, Job(_job).Expected));
    }

    [Fact]
    public void Unknown_job_is_absent_to_every_move()
    {
        Outcome[] outcomes =
        [
            Moves.Start(Who.Shop, 99), Moves.MarkStrung(Who.Shop, 99, StrungToday), Moves.Collect(Who.Shop, 99, new HandOutEntry { CollectedOn = Street.Today }),
            Moves.Cancel(Who.Shop, 99), Payments.PayJob(Who.Shop, 99, Cash(Street.Today)), Backs.Back(Who.Shop, 99, JobState.Strung),
        ];

        Assert.All(outcomes, o => Assert.IsType<Outcome.Absent>(o));
    }
}
