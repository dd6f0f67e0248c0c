using TagPage.Records.Outbox;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Reminders;

/// <summary>Reminders to many at once: who is left out and why, and that each household is done once, all of it or nothing.</summary>
public sealed class BatchStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly BatchStore _store;
    private readonly BatchReminder _reminder;
    private readonly NewReminderStore _news;
    private readonly Letters _letters = new();

    public BatchStoreTests()
    {
        var shops = new ShopStore(_street.Database);
        _news = new NewReminderStore(_street.Database, shops, _street.Clock);
        _reminder = new BatchReminder(_news, new OutboxStore(_street.Database, _street.Time), _letters, shops, _street.Clock);
        _store = new BatchStore(_street.Database, _reminder, _street.Clock);
        _street.Records.Change("UPDATE racket SET own_date = '2026-11-20'");
    }

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("UPDATE racket SET own_date = '2027-06-01'", LeftOut.NothingDue)]
    [InlineData("UPDATE racket SET state = 'Resting'", LeftOut.NothingDue)]
    [InlineData("UPDATE racket SET not_before = '2026-11-26'", LeftOut.NothingDue)]
    [InlineData("UPDATE client SET reminders = 0", LeftOut.NoReminders)]
    [InlineData("UPDATE client SET remind_by = 'Sms'", LeftOut.WishesSms)]
    [InlineData("UPDATE client SET mail = NULL", LeftOut.NoMail)]
    [InlineData("UPDATE client SET quiet_months = 1024", LeftOut.QuietMonth)]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at, sent_how, sent_at) VALUES (1, '2026-11-01T10:00:00.000Z', '2027-01-12T10:00:00.000Z', 'Mail', '2026-11-11T10:00:01.000Z')", LeftOut.TooSoon)]
    [InlineData("UPDATE shop SET mail = NULL", LeftOut.ShopHasNoMail)]
    public void Household_is_left_out_for_its_reason_and_nothing_is_sent(string before, LeftOut why)
    {
        _street.Records.Change(before);
        var (reminders, id) = (_street.Records.Count("reminder"), Make(_street.Odalys));

        Assert.True(_store.Step());

        Assert.Equal(("Skipped", why, null), Line(id));
        Assert.Equal((reminders, 0), (_street.Records.Count("reminder"), _street.Records.Count("outbox")));
    }

    [Theory]
    [InlineData("UPDATE client SET quiet_months = 512")]
    [InlineData("UPDATE racket SET not_before = '2026-11-25'")]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at, sent_how, sent_at) VALUES (1, '2026-11-01T10:00:00.000Z', '2027-01-11T10:00:00.000Z', 'Mail', '2026-11-11T10:00:00.000Z')")]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at) VALUES (1, '2026-11-24T10:00:00.000Z', '2027-01-24T10:00:00.000Z')")]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at, sent_how, sent_at, discarded) VALUES (1, '2026-11-24T10:00:00.000Z', '2027-01-24T10:00:00.000Z', 'Mail', '2026-11-24T10:00:00.000Z', 1)")]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at, sent_how, sent_at) VALUES (1, '2026-11-24T10:00:00.000Z', '2027-01-24T10:00:00.000Z', 'Phone', '2026-11-24T10:00:00.000Z')")]
    public void What_lies_just_beside_a_reason_leaves_nobody_out(string before)
    {
        _street.Records.Change(before);
        var id = Make(_street.Odalys);

        Assert.True(_store.Step());

        Assert.Equal("Sent", Line(id).State);
        Assert.Equal(1, _street.Records.Count("outbox", "kind = 'Reminder' AND reminder_id = (SELECT MAX(id) FROM reminder)"));
    }

    [Fact]
    public void Household_is_judged_when_its_turn_comes()
    {
        var id = Make(_street.Odalys);
        _street.Records.Change("UPDATE client SET reminders = 0");

        _store.Step();

        Assert.Equal(LeftOut.NoReminders, Line(id).Why);
    }

    [Fact]
    public void Second_of_two_batches_reminds_nobody_again()
    {
        var (first, second) = (Make(_street.Odalys), Make(_street.Odalys));

        while (_store.Step())
        {
            // Until nobody waits.
        }

        Assert.Equal(("Sent", LeftOut.TooSoon), (Line(first).State, Line(second).Why));
        Assert.Equal(1, _street.Records.Count("outbox"));
    }

    [Fact]
    public void Household_that_waits_in_a_batch_is_left_out_of_the_next_until_its_turn_came_or_the_batch_was_stopped()
    {
        Assert.Null(WhyNot());
        var id = Make(_street.Odalys, _street.Ewan);
        Assert.Equal([new BatchStore.Waiting { Id = id, Households = 2 }], _store.AllWaiting());
        Assert.Equal(LeftOut.Waits, WhyNot());

        Assert.True(_store.Step());
        Assert.Equal(("Sent", LeftOut.TooSoon), (_store.Get(id)!.Lines.Single(line => line.ClientId == _street.Odalys).State, WhyNot()));
        Assert.Equal([new BatchStore.Waiting { Id = id, Households = 1 }], _store.AllWaiting());

        _street.Records.Change("UPDATE reminder SET discarded = 1");
        var second = Make(_street.Odalys);
        Assert.Equal(LeftOut.Waits, WhyNot());
        _store.Stop(Who.Shop, second);
        Assert.Null(WhyNot());
        _store.Stop(Who.Shop, id);
        Assert.Empty(_store.AllWaiting());
    }

    /// <summary>Made by hand it would be void as soon as the batch's own goes out.</summary>
    [Fact]
    public void Household_that_waits_in_a_batch_is_reminded_by_hand_only_where_the_owner_insists()
    {
        var id = Make(_street.Odalys);
        var before = _street.Records.Count("reminder");

        _street.Refused<ReminderWaits>(() => _news.Add(Who.Shop, _street.Odalys, new NewReminderEntry { FormKey = FormKey.New() }));
        Assert.Equal(before, _street.Records.Count("reminder"));
        Assert.Equal(id, _news.Get(_street.Odalys)!.BatchId);

        Assert.IsType<Outcome.Done>(_news.Add(Who.Shop, _street.Odalys, new NewReminderEntry { FormKey = FormKey.New(), ByPhone = true }));
        Assert.IsType<Outcome.Done>(_news.Add(Who.Shop, _street.Odalys, new NewReminderEntry { FormKey = FormKey.New(), Insist = true }));
    }

    [Fact]
    public void Stopped_batch_goes_no_further_and_is_not_the_one_that_runs()
    {
        var id = Make(_street.Odalys, _street.Ewan);
        _store.Step();
        Assert.Equal(id, _store.Running());

        Assert.IsType<Outcome.Done>(_store.Stop(Who.Shop, id));

        Assert.False(_store.Step());
        Assert.Null(_store.Running());
        Assert.Equal((1, false), (_store.Get(id)!.Waiting, _store.Get(id)!.IsRunning));
        var at = _store.Get(id)!.StoppedAt;
        _street.Time.Advance(TimeSpan.FromHours(1));
        _store.Stop(Who.Shop, id);
        Assert.Equal(at, _store.Get(id)!.StoppedAt);
        Assert.IsType<Outcome.Absent>(_store.Stop(Who.Shop, 99));
    }

    [Fact]
    public void Letter_that_cannot_be_written_leaves_the_household_waiting_and_nothing_half_done()
    {
        var id = Make(_street.Odalys);
        _letters.Breaks = true;
        var before = _street.Records.Count("reminder");

        Assert.Throws<InvalidOperationException>(() => _store.Step());

        Assert.Equal(("Waiting", before, 0), (Line(id).State, _street.Records.Count("reminder"), _street.Records.Count("outbox")));
        _letters.Breaks = false;
        Assert.True(_store.Step());
        Assert.Equal("Sent", Line(id).State);
    }

    [Fact]
    public void Form_sent_twice_is_one_batch_of_those_on_file_each_once()
    {
        var key = FormKey.New();
        long[] chosen = [_street.Odalys, _street.Odalys, _street.Ewan, 77];

        Assert.Equal(_store.Make(Who.Shop, key, chosen), _store.Make(Who.Shop, key, chosen));

        Assert.Equal(["Ewan Lockyer", "Odalys Ferran"], _store.Get(1)!.Lines.Select(line => line.Client));
        Assert.Equal(1, _street.Records.Count("reminder_batch"));
        _street.Refused<NobodyChosen>(() => _store.Make(Who.Shop, FormKey.New(), []));
        Assert.Null(_store.Get(77));
    }

    [Theory]
    [InlineData(20, 8, 19, false)]
    [InlineData(20, 8, 20, true)]
    [InlineData(20, 8, 0, true)]
    [InlineData(20, 8, 7, true)]
    [InlineData(20, 8, 8, false)]
    [InlineData(12, 14, 13, true)]
    [InlineData(12, 14, 14, false)]
    [InlineData(0, 0, 0, false)]
    [InlineData(9, 9, 9, false)]
    public void Quiet_hours_begin_with_the_first_and_end_before_the_last(int from, int until, int hour, bool quiet) =>
        Assert.Equal(quiet, BatchWorker.IsWithin(hour, from, until));

    private LeftOut? WhyNot() => _reminder.WhyNot(_news.WithoutDates([_street.Odalys]).Single(), isDue: true);

    private long Make(params long[] clients) => Assert.IsType<Outcome.Done>(_store.Make(Who.Shop, FormKey.New(), clients)).Id;

    private (string State, LeftOut? Why, long? Reminder) Line(long id) => Assert.Single(_store.Get(id)!.Lines) is var line ? (line.State, line.Why, line.ReminderId) : default;

    private sealed class Letters : IReminderMails
    {
        public bool Breaks { get; set; }

        public WrittenMail Reminder(long id, NewReminderStore.Household household) =>
            Breaks ? throw new InvalidOperationException("No words.") : new WrittenMail("due", "due");
    }
}
