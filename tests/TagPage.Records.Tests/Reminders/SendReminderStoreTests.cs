using TagPage.Records.Outbox;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Reminders;

/// <summary>A reminder to Odalys, sent once, and only while its link opens something.</summary>
public sealed class SendReminderStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly SendReminderStore _store;
    private readonly long _reminder;

    public SendReminderStoreTests()
    {
        _store = new SendReminderStore(_street.Database, new OutboxStore(_street.Database, _street.Time), new ShopStore(_street.Database), _street.Clock);
        _reminder = _street.Records.Reminder(_street.Odalys, _street.Racket);
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Reminder_is_mailed_once()
    {
        _street.Check(true, Mail);
        _street.Refused<MailedAlready>(Mail);

        _street.Records.Change("UPDATE outbox SET state = 'MaybeSent'");
        _street.Refused<MailedAlready>(Mail);
        _street.Records.Change("UPDATE outbox SET state = 'Failed'");
        _street.Check(true, Mail);
    }

    /// <summary>Her email was refused, or waits for another try; Runa sent it by SMS.</summary>
    [Theory]
    [InlineData("Failed")]
    [InlineData("Queued")]
    public void Sent_another_way_its_email_is_over_and_cannot_be_tried_again(string state)
    {
        Mail();
        _street.Records.Change("UPDATE outbox SET state = @state, tries = 1, last_error = 'no such mailbox'", new { state });
        var mail = long.Parse(_street.Records.Text("SELECT id FROM outbox")!, System.Globalization.CultureInfo.InvariantCulture);

        _street.Check(true, () => _store.NoteSent(Who.Shop, _reminder, SentHow.SmsApp));

        Assert.Equal("Failed", _street.Records.Text("SELECT state FROM outbox"));
        _street.Refused<MailNotGivenUp>(() => _store.Retry(Who.Shop, mail));
        Assert.Empty(new ReminderListStore(_street.Database).Unsent());
    }

    /// <summary>Old emails are deleted after a month; what became of them stays known as long as the reminder.</summary>
    [Theory]
    [InlineData("Failed")]
    [InlineData("MaybeSent")]
    [InlineData("Sent")]
    public void Fate_of_its_email_outlives_the_email(string state)
    {
        Mail();
        _street.Records.Change("UPDATE outbox SET state = @state, sent_at = CASE @state WHEN 'Sent' THEN made_at END, last_error = 'gone quiet'", new { state });
        var outbox = new OutboxStore(_street.Database, _street.Time);
        _street.Time.Advance(TimeSpan.FromDays(31));
        _street.Database.Write(c => outbox.Queue(c, new NewMail(MailKind.ClientNotice, _street.Ewan, "news", "news")));
        new DeliveryStore(_street.Database, _street.Time).Sent(outbox.Claim(MailLane.AllElse)!.Id, _street.Time.GetUtcNow());
        Assert.Equal(0, _street.Records.Count("outbox", "reminder_id IS NOT NULL"));

        Assert.Equal(state, new ReminderListStore(_street.Database).Get(_reminder)!.OutboxState);
        Assert.Equal(state == "Failed", new NewReminderStore(_street.Database, new ShopStore(_street.Database), _street.Clock).Get(_street.Odalys)!.RemindedAt is null);
        if (state == "Failed")
            _street.Check(true, Mail);
        else
            _street.Refused<MailedAlready>(Mail);
    }

    [Fact]
    public void Nobody_is_mailed_against_their_wish_or_without_an_address()
    {
        _street.Records.Change("UPDATE client SET reminders = 0");
        _street.Refused<RemindersUnwanted>(Mail);
        _street.Records.Change("UPDATE client SET reminders = 1, mail = NULL");
        _street.Refused<ClientHasNoMail>(Mail);
        _street.Records.Change("UPDATE client SET mail = 'odalys@ferran.example'; UPDATE shop SET mail = NULL");
        _street.Refused<ShopHasNoMail>(Mail);
        _street.Check(false, () => _store.Mail(Who.Shop, 99, "due", "due"));
    }

    [Fact]
    public void Household_that_answered_for_every_racket_is_not_mailed_until_an_answer_is_taken_back()
    {
        _street.Records.Change("UPDATE reminder_racket SET answer = 'NotYet', answered_at = '2026-11-24 10:00:00'");
        _street.Refused<AnsweredInFull>(Mail);

        _street.Records.Change("UPDATE reminder_racket SET answer = NULL, answered_at = NULL");
        _street.Check(true, Mail);
    }

    [Fact]
    public void Email_of_a_reminder_that_nobody_needs_any_more_is_not_offered_again()
    {
        var list = new ReminderListStore(_street.Database);
        Mail();
        _street.Records.Change("UPDATE outbox SET state = 'Failed', tries = 8");
        Assert.True(Assert.Single(list.Unsent()).CanRetry);

        foreach (var change in new[] { "UPDATE reminder SET discarded = 1", "UPDATE reminder_racket SET answer = 'NotYet', answered_at = '2026-11-24 10:00:00'", "UPDATE client SET reminders = 0" })
        {
            _street.Records.Change(change);
            Assert.False(Assert.Single(list.Unsent()).CanRetry);
            _street.Refused<MailNotGivenUp>(() => _store.Retry(Who.Shop, 1));
            _street.Records.Change("UPDATE reminder SET discarded = 0; UPDATE reminder_racket SET answer = NULL, answered_at = NULL; UPDATE client SET reminders = 1");
            Assert.True(Assert.Single(list.Unsent()).CanRetry);
        }
    }

    /// <summary>Quiet hours, or a mail server that rests: the older email still waits when the owner insists on a newer one.</summary>
    [Theory]
    [InlineData(0, "Failed")]
    [InlineData(1, "MaybeSent")]
    public void Older_email_that_still_waits_does_not_leave_after_a_newer_reminder(int maybeSent, string state)
    {
        Mail();
        var outbox = new OutboxStore(_street.Database, _street.Time);
        _street.Records.Change("UPDATE outbox SET maybe_sent = @maybeSent; UPDATE racket SET own_date = '2026-11-20'", new { maybeSent });
        var shops = new ShopStore(_street.Database);

        var newer = Assert.IsType<Outcome.Done>(new NewReminderStore(_street.Database, shops, _street.Clock)
            .Add(Who.Shop, _street.Odalys, new NewReminderEntry { FormKey = FormKey.New(), Insist = true })).Id;

        Assert.Null(outbox.Claim(MailLane.AllElse));
        Assert.Equal($"{state}|A newer reminder took its place.", _street.Records.Text("SELECT state || '|' || last_error FROM outbox"));
        _street.Refused<MailNotGivenUp>(() => _store.Retry(Who.Shop, 1));
        _street.Check(true, () => _store.Mail(Who.Shop, newer, "due", "due"));
        Assert.Equal(newer, outbox.Claim(MailLane.AllElse)!.ReminderId);
    }

    [Fact]
    public void Email_of_another_household_still_leaves()
    {
        Mail();
        var shops = new ShopStore(_street.Database);
        _street.Records.Job(_street.Records.Racket(_street.Records.Player(_street.Ewan, "Bo Lockyer")), strungOn: new(2026, 11, 1));
        _street.Records.Change("UPDATE racket SET own_date = '2026-11-20'");

        Assert.IsType<Outcome.Done>(new NewReminderStore(_street.Database, shops, _street.Clock).Add(Who.Shop, _street.Ewan, new NewReminderEntry { FormKey = FormKey.New() }));

        Assert.NotNull(new OutboxStore(_street.Database, _street.Time).Claim(MailLane.AllElse));
    }

    [Fact]
    public void Reminder_that_was_withdrawn_or_replaced_is_not_mailed()
    {
        var second = _street.Records.Reminder(_street.Odalys, _street.Racket);
        _street.Refused<ReminderVoid>(Mail);

        _street.Check(true, () => _store.Discard(Who.Shop, second));
        _street.Check(true, Mail);
        _street.Refused<ReminderVoid>(() => _store.Mail(Who.Shop, second, "due", "due"));
    }

    [Theory]
    [InlineData("Failed", 0)]
    [InlineData("MaybeSent", 1)]
    public void Mail_given_up_goes_once_more_from_the_beginning(string state, int maybeSent)
    {
        Mail();
        _street.Records.Change("UPDATE outbox SET state = @state, maybe_sent = @maybeSent, tries = 8, let_go = 1, last_error = 'gone quiet', not_before = '2026-11-26T10:00:00.000Z'", new { state, maybeSent });

        _street.Check(true, () => _store.Retry(Who.Shop, 1));

        Assert.Equal("Queued|0|0||2026-11-25T10:00:00.000Z", _street.Records.Text("SELECT state || '|' || tries || '|' || let_go || '|' || last_error || '|' || not_before FROM outbox"));
    }

    [Theory]
    [InlineData("UPDATE outbox SET state = 'Queued'")]
    [InlineData("UPDATE outbox SET state = 'Leaving'")]
    [InlineData("UPDATE outbox SET state = 'Sent', sent_at = made_at")]
    [InlineData("UPDATE client SET reminders = 0")]
    [InlineData("UPDATE reminder SET discarded = 1")]
    [InlineData("UPDATE reminder_racket SET answer = 'NotYet', answered_at = '2026-11-24 10:00:00'")]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at) SELECT client_id, made_at, expires_at FROM reminder")]
    public void Mail_that_is_not_given_up_or_whose_link_opens_nothing_is_not_tried_again(string before)
    {
        Mail();
        _street.Records.Change("UPDATE outbox SET state = 'Failed'");
        _street.Records.Change(before);

        _street.Refused<MailNotGivenUp>(() => _store.Retry(Who.Shop, 1));
    }

    [Fact]
    public void Withdrawn_reminder_holds_its_mail_back_once()
    {
        Mail();

        _street.Check(true, () => _store.Discard(Who.Shop, _reminder));
        Assert.Equal("Failed", _street.Records.Text("SELECT state FROM outbox"));
        _street.Check(false, () => _store.Discard(Who.Shop, _reminder));
    }

    [Fact]
    public void Mail_on_its_way_is_not_called_back()
    {
        Mail();
        _street.Records.Change("UPDATE outbox SET state = 'Leaving'");

        _store.Discard(Who.Shop, _reminder);

        Assert.Equal("Leaving", _street.Records.Text("SELECT state FROM outbox"));
    }

    private Outcome Mail() => _store.Mail(Who.Shop, _reminder, "due", "due");
}
