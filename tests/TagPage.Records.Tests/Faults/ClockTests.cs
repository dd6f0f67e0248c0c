using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Backups;
using TagPage.Records.DueDates;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Tests.Events;
using TagPage.Records.Tests.Permissions;

namespace TagPage.Records.Tests.Faults;

/// <summary>
/// The machine’s clock is wrong by an hour or by two days, either way, and is set right again: nothing is lost or done twice, nobody waits longer than
/// they would have, and nothing lives longer than its time by more than the clock was off.
/// </summary>
public sealed class ClockTests : IDisposable
{
    private static readonly TimeSpan Day = TimeSpan.FromDays(1);

    private readonly Vault _vault = new();

    private Street Street => _vault.Street;

    public void Dispose() => _vault.Dispose();

    public static TheoryData<int> HoursOff => [-48, -1, 1, 48];

    /// <summary>Set without anything having happened, as by hand.</summary>
    private void Off(int hours) => Street.Time.AdjustTime(Street.Time.GetUtcNow().AddHours(hours));

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Browser_stays_signed_in_and_no_longer_than_its_time(int off)
    {
        var sessions = new SessionStore(Street.Database, new OutboxStore(Street.Database, Street.Time), Street.Time);
        Off(off);
        var id = sessions.Begin("a1", SignInWay.Password, "a browser");
        Assert.NotNull(sessions.Live(id, "a1", "s"));

        Off(-off);
        Assert.NotNull(sessions.Live(id, "a1", "s"));
        sessions.Begin("a1", SignInWay.Password, "another");
        Assert.NotNull(sessions.Live(id, "a1", "s"));
        Street.Time.Advance(SessionStore.Longest + TimeSpan.FromHours(Math.Max(0, off)));
        Assert.Null(sessions.Live(id, "a1", "s"));
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void One_time_link_is_void_after_its_half_hour_and_works_once(int off)
    {
        var links = new NewPasswordStore(Street.Database, Street.Time);
        Off(off);
        var token = links.NewToken()!;
        Assert.NotNull(links.OwnerBehind(token));

        Off(-off);
        Street.Time.Advance(TimeSpan.FromMinutes(30) + TimeSpan.FromHours(Math.Max(0, off)));
        Assert.Null(links.OwnerBehind(token));
        Assert.NotNull(links.OwnerBehind(links.NewToken()!));
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Wrong_pins_lock_nobody_out_for_longer_than_the_wait_itself(int off)
    {
        var pins = new PinStore(Street.Database, Street.Time);
        Street.Records.Change("UPDATE account SET pin_hash = 'hash'; INSERT INTO shared_tablet (id, secret_hash, name, made_at) VALUES (1, 'hash', 'bench', '2026-11-25T09:00:00.000Z')");
        Off(off);
        for (var wrong = 0; wrong < 3; wrong++)
        {
            pins.Take(1, "a1");
            Street.Time.Advance(TimeSpan.FromSeconds(5));
        }

        Off(-off);
        Street.Time.Advance(TimeSpan.FromSeconds(10));
        Assert.NotNull(pins.Take(1, "a1")!.Hash);
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Codes_for_the_own_page_can_be_asked_for_again_after_two_of_their_hours_at_most(int off)
    {
        using var scene = new Scene();
        var odalys = Who.Client(scene.Street.Odalys, scene.Street.Records.Text("SELECT id_hash FROM own_page_session WHERE client_id = 1"));
        scene.Street.Time.AdjustTime(scene.Street.Time.GetUtcNow().AddHours(off));
        for (var code = 0; code < 3; code++)
            Assert.IsType<Outcome.Done>(scene.Codes.Send(odalys));
        Assert.IsType<Outcome.Refused>(scene.Codes.Send(odalys));

        scene.Street.Time.AdjustTime(scene.Street.Time.GetUtcNow().AddHours(-off));
        scene.Street.Time.Advance(TimeSpan.FromHours(off == 1 ? 2 : 1));
        Assert.IsType<Outcome.Done>(scene.Codes.Send(odalys));
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Email_leaves_once_and_does_not_wait_for_a_day_that_was_wrong(int off)
    {
        var outbox = new OutboxStore(Street.Database, Street.Time);
        Off(off);
        Street.Database.Write(c => outbox.Queue(c, new NewMail(MailKind.ClientNotice, Street.Odalys, "Ready", MailText.Words("Your racket is ready."))));

        Off(-off);
        var mail = outbox.Claim(MailLane.AllElse);
        Assert.NotNull(mail);
        Deliveries.Sent(mail.Id, Street.Time.GetUtcNow());
        Off(off);
        Assert.Null(outbox.Claim(MailLane.AllElse));
        Off(-off);
        Assert.Null(outbox.Claim(MailLane.AllElse));
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Email_that_was_put_off_is_tried_again_after_the_longest_pause_at_most(int off)
    {
        var outbox = new OutboxStore(Street.Database, Street.Time);
        Street.Database.Write(c => outbox.Queue(c, new NewMail(MailKind.ClientNotice, Street.Odalys, "Ready", MailText.Words("Your racket is ready."))));
        Off(Math.Max(0, off));
        Deliveries.NotSent(outbox.Claim(MailLane.AllElse)!, "451 later", final: false);
        Assert.Null(outbox.Claim(MailLane.AllElse));

        Off(-Math.Max(0, off) + Math.Min(0, off));
        Street.Time.Advance(DeliveryStore.LongestPause);
        if (off < 0)
            Off(-off);
        Assert.NotNull(outbox.Claim(MailLane.AllElse));
    }

    private DeliveryStore Deliveries => new(Street.Database, Street.Time);

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Household_is_reminded_once_whatever_day_it_seems_to_be(int off)
    {
        using var scene = new Scene();
        scene.Street.Records.Change("UPDATE racket SET own_date = '2026-11-20' WHERE id = 1");
        foreach (var hours in (int[])[off, -off, 0])
        {
            scene.Street.Time.AdjustTime(scene.Street.Time.GetUtcNow().AddHours(hours));
            Assert.IsType<Outcome.Done>(scene.Batches.Make(Who.Shop, Scene.Key, new[] { scene.Street.Odalys }));
            while (scene.Batches.Step())
            {
            }
        }
        Assert.Equal("1", scene.Street.Records.Text("SELECT COUNT(*) FROM outbox WHERE kind = 'Reminder'"));
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Each_night_gets_its_backup_and_none_made_by_a_wrong_clock_takes_its_place(int off)
    {
        _vault.Store.Tend();
        Off(off);
        _vault.Store.Tend();
        var before = _vault.Own.Select(DayOf);

        Off(-off);
        for (var night = 0; night < 3; night++)
        {
            Street.Time.Advance(Day);
            _vault.Store.Tend();
        }

        Assert.All(["20261126", "20261127", "20261128"], day => Assert.Contains(day, _vault.Own.Select(DayOf)));
        Assert.All(before, day => Assert.Contains(day, _vault.Own.Select(DayOf)));
        Assert.False(Street.Clock.Now - _vault.Store.State().LastGood > BackupTime.Old);
    }

    private static string DayOf(string backup) => backup[..8];

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Form_sent_again_is_the_same_form(int off)
    {
        var entry = new StringingListEntry { FormKey = FormKey.New(), Lines = [], Headings = "[]" };
        var lists = new StringingListStore(Street.Database, Street.Time);
        var first = lists.Begin(Who.Shop, entry);

        Off(off);
        Assert.Equal(first, lists.Begin(Who.Shop, entry));
        Off(-off);
        Assert.Equal(first, lists.Begin(Who.Shop, entry));
        Assert.Equal("1", Street.Records.Text("SELECT COUNT(*) FROM stringing_list"));
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Dates_at_rackets_are_those_of_the_day_it_is(int off)
    {
        var dates = new DueDateKeeper(Street.Database, Street.Time);
        foreach (var hours in (int[])[0, off, -off])
        {
            Off(hours);
            dates.BeginDay();
            while (dates.RefreshLater())
            {
            }
            Assert.Equal($"{Street.Clock.Today:yyyy-MM-dd}", Street.Records.Text("SELECT day FROM due_day"));
            Assert.Equal("0", Street.Records.Text("SELECT COUNT(*) FROM due_again WHERE in_background = 1"));
        }
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void What_happened_stays_in_the_order_in_which_it_happened(int off)
    {
        var audit = new AuditStore(Street.Database, Street.Time);
        audit.Add(AuditEvent.SignedIn, "first");
        Off(off);
        audit.Add(AuditEvent.SignedIn, "second");
        Off(-off);
        audit.Add(AuditEvent.SignedIn, "third");
        audit.Add(AuditEvent.SignedIn, "second");

        Assert.Equal("third", audit.Page(Who.Shop, long.MaxValue).First(line => line.Detail != "second").Detail);
        Assert.Equal("2", Street.Records.Text("SELECT SUM(times) FROM audit WHERE detail = 'second'"));
    }

    /// <summary>By a clock of two days ago it would be strung before it came in, and that is said.</summary>
    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Racket_is_strung_at_the_bench_and_only_an_hour_is_taken_for_an_hour(int off)
    {
        var (moves, job) = (new MoveStore(Street.Database, Street.Clock), Street.Records.Job(Street.Racket));
        Assert.IsType<Outcome.Done>(moves.Start(Who.Shop, job));
        var started = Street.Clock.Now;

        Off(off);
        var left = new JobMinutesStore(Street.Database).Learned().Left(new JobRow { State = JobState.OnMachine, StartedAt = started }, Street.Clock.Now);
        Assert.InRange(left, LearnedMinutes.Shortest, LearnedMinutes.Start);
        var strung = moves.MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = Street.Clock.Today });
        Assert.Equal(off == -48, strung is Outcome.Refused);

        Off(-off);
        if (strung is Outcome.Refused)
            Assert.IsType<Outcome.Done>(moves.MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = Street.Clock.Today }));
        Assert.All(new JobMinutesStore(Street.Database).Learned().Learned.Values, minutes => Assert.Equal(off == 1 ? LearnedMinutes.From([60]) : LearnedMinutes.Start, minutes));
    }

    [Theory]
    [MemberData(nameof(HoursOff))]
    public void Racket_at_an_event_goes_on_its_way(int off)
    {
        using var fair = new Fair();
        var number = fair.TakeIn();
        Assert.IsType<Outcome.Done>(fair.Moves.Take(fair.Helper, fair.Id, number, fair.Runa));

        fair.Street.Time.AdjustTime(fair.Street.Time.GetUtcNow().AddHours(off));
        Assert.IsType<Outcome.Done>(fair.Moves.Strung(fair.Helper, fair.Id, number));
        fair.Street.Time.AdjustTime(fair.Street.Time.GetUtcNow().AddHours(-off));
        Assert.IsType<Outcome.Done>(fair.Moves.HandOut(fair.Helper, fair.Id, number, PaymentMethod.Cash));
    }
}
