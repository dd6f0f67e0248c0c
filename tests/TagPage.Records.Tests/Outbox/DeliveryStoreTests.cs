using TagPage.Records.Outbox;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Outbox;

/// <summary>What becomes of an email to Odalys, try by try.</summary>
public sealed class DeliveryStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly OutboxStore _outbox;
    private readonly DeliveryStore _fates;

    public DeliveryStoreTests() => (_outbox, _fates) = (new OutboxStore(_street.Database, _street.Time), new DeliveryStore(_street.Database, _street.Time));

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Claimed_mail_is_claimed_once()
    {
        Queue();

        Assert.NotNull(Claim());
        Assert.Null(Claim());
    }

    [Fact]
    public void Mail_goes_to_the_address_on_file_when_it_leaves()
    {
        Queue();
        _street.Records.Change("UPDATE client SET mail = 'new@ferran.example' WHERE id = @Odalys", new { _street.Odalys });

        Assert.Equal(("Odalys Ferran", "new@ferran.example"), Claim() is { } mail ? (mail.ToName, mail.ToMail) : default);
    }

    [Fact]
    public void Try_that_failed_is_made_again_after_ever_longer_pauses_and_given_up_after_the_eighth()
    {
        Queue();
        int[] minutes = [1, 5, 15, 60, 120, 240, 480];

        foreach (var pause in minutes)
        {
            _fates.NotSent(Claim()!, "451 not now", final: false);
            _street.Time.Advance(TimeSpan.FromMinutes(pause) - TimeSpan.FromSeconds(1));
            Assert.Null(Claim());
            _street.Time.Advance(TimeSpan.FromSeconds(1));
        }
        _fates.NotSent(Claim()!, "451 not now", final: false);

        Assert.Equal("Failed|8|451 not now", Fate);
        _street.Time.Advance(TimeSpan.FromDays(2));
        Assert.Null(Claim());
    }

    [Fact]
    public void Final_refusal_is_not_argued_with()
    {
        Queue();

        _fates.NotSent(Claim()!, "550 no such person", final: true);

        Assert.Equal("Failed|1|550 no such person", Fate);
    }

    [Fact]
    public void Mail_of_unknown_fate_goes_once_more_under_the_same_number_and_then_no_more()
    {
        Queue();
        var first = Claim()!;
        _fates.Unknown(first.Id, "gone quiet");
        Assert.Null(Claim());

        _street.Time.Advance(DeliveryStore.Rest);
        var second = Claim()!;
        Assert.Equal(first.MessageId, second.MessageId);
        _fates.Unknown(second.Id, "gone quiet again");

        Assert.Equal("MaybeSent|2|gone quiet again", Fate);
    }

    [Fact]
    public void Mail_that_may_have_gone_out_is_never_called_failed()
    {
        Queue();
        _fates.Unknown(Claim()!.Id, "gone quiet");
        _street.Time.Advance(DeliveryStore.Rest);

        _fates.NotSent(Claim()!, "550 no such person", final: true);

        Assert.Equal("MaybeSent|2|550 no such person", Fate);
    }

    [Fact]
    public void What_a_program_left_on_its_way_counts_as_unknown_and_what_waits_does_not()
    {
        Queue();
        Queue();
        Claim();

        Assert.Equal(1, _fates.LeftBehind());

        Assert.Equal(1, _street.Records.Count("outbox", "state = 'Queued' AND maybe_sent = 1 AND tries = 1"));
        Assert.Equal(1, _street.Records.Count("outbox", "state = 'Queued' AND maybe_sent = 0 AND tries = 0"));
        Assert.Equal(0, _fates.LeftBehind());
    }

    [Fact]
    public void Mail_that_was_not_tried_waits_as_before()
    {
        Queue();
        var before = _street.Records.Text("SELECT state || tries || not_before FROM outbox");

        _fates.NotTried(Claim()!.Id);

        Assert.Equal(before, _street.Records.Text("SELECT state || tries || not_before FROM outbox"));
        Assert.NotNull(Claim());
    }

    [Fact]
    public void News_of_a_mail_that_is_not_on_its_way_changes_nothing()
    {
        Queue();
        var mail = Claim()!;
        _fates.Sent(mail.Id, _street.Time.GetUtcNow());
        var before = Fate;

        _fates.NotSent(mail, "late", final: true);
        _fates.Unknown(mail.Id, "late");
        _fates.NotTried(mail.Id);

        Assert.Equal("Sent|1|", before);
        Assert.Equal(before, Fate);
    }

    [Fact]
    public void Long_reason_is_cut_and_kept()
    {
        Queue();

        _fates.NotSent(Claim()!, new string('x', 301), final: true);

        Assert.Equal(300, _street.Records.Text("SELECT last_error FROM outbox").Length);
    }

    [Fact]
    public void Old_mail_is_pruned_when_another_is_sent_unless_it_still_waits()
    {
        Queue();
        _fates.Sent(Claim()!.Id, _street.Time.GetUtcNow());
        Queue(_street.Time.GetUtcNow().AddDays(40));
        _street.Time.Advance(TimeSpan.FromDays(31));
        Queue();

        _fates.Sent(Claim()!.Id, _street.Time.GetUtcNow());

        Assert.Equal("2 Queued, 3 Sent", _street.Records.Text("SELECT group_concat(id || ' ' || state, ', ' ORDER BY id) FROM outbox"));
    }

    [Fact]
    public void Code_that_ran_out_is_not_sent_and_one_of_unknown_fate_not_sent_again()
    {
        _street.Records.Change("""
            INSERT INTO own_page_code (client_id, made_at, expires_at)
            VALUES (@Odalys, '2026-11-25T10:00:00.000Z', '2026-11-25T10:10:00.000Z'), (@Odalys, '2026-11-25T10:05:00.000Z', '2026-11-25T10:15:00.000Z')
            """, new { _street.Odalys });
        foreach (var code in new[] { 1, 2 })
            _street.Database.Write(c => _outbox.Queue(c, new NewMail(MailKind.OwnPageCode, _street.Odalys, "code", "code") { CodeId = code }));
        _street.Time.Advance(TimeSpan.FromMinutes(10));

        var mail = _outbox.Claim(MailLane.AwaitedNow)!;
        _fates.Unknown(mail.Id, "gone quiet");

        Assert.Equal(2, mail.CodeId);
        Assert.Equal("Failed, MaybeSent", _street.Records.Text("SELECT group_concat(state, ', ' ORDER BY id) FROM outbox"));
    }

    [Fact]
    public void Reminders_let_everything_else_go_first()
    {
        var reminder = _street.Records.Reminder(_street.Odalys, _street.Racket);
        _street.Database.Write(c => _outbox.Queue(c, new NewMail(MailKind.Reminder, _street.Odalys, "due", "due") { ReminderId = reminder }));
        _street.Time.Advance(TimeSpan.FromMinutes(1));
        Queue();

        Assert.Equal([MailKind.ClientNotice, MailKind.Reminder], [Claim()!.Kind, Claim()!.Kind]);
        Assert.Null(_outbox.Claim(MailLane.AwaitedNow));
    }

    private void Queue(DateTimeOffset? notBefore = null) =>
        _street.Database.Write(c => _outbox.Queue(c, new NewMail(MailKind.ClientNotice, _street.Odalys, "news", "news") { NotBefore = notBefore }));

    private OutboxStore.Row? Claim() => _outbox.Claim(MailLane.AllElse);

    private string Fate => _street.Records.Text("SELECT state || '|' || tries || '|' || last_error FROM outbox");
}
