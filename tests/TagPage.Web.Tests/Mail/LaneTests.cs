using TagPage.Records.Outbox;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>Which email goes before which, and what a hanging one means for the others.</summary>
public sealed class LaneTests : IAsyncDisposable
{
    private readonly MoodyServer _server = new();
    private readonly TestShop _shop;

    public LaneTests() => _shop = MailShop.Of(_server.Port);

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public async ValueTask DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task Code_goes_out_within_seconds_while_a_batch_of_reminders_hangs_in_the_server()
    {
        _shop.Records.Change("INSERT INTO client (id, name, mail) VALUES (2, 'Odalys Ferran', 'odalys@client.example')");
        _server.Says = (stage, to) => stage == MoodyServer.End && to.Contains("zoe@", StringComparison.Ordinal) ? _server.Silence() : Task.FromResult<string?>(null);
        for (var n = 0; n < 50; n++)
            _shop.Queue(MailKind.Reminder, "Restring time");
        await _shop.Get<MailSender>().StartAsync(Token);
        await MailShop.Until(() => _server.Whole.Count == 1);

        Code(client: 2);
        for (var looks = 0; looks < 3 && !IsCodeSent(); looks++)
        {
            _shop.Clock.Advance(TimeSpan.FromSeconds(5));
            await Record.ExceptionAsync(() => MailShop.Until(IsCodeSent, TimeSpan.FromSeconds(3)));
        }

        Assert.True(IsCodeSent());
        Assert.Equal(0, _shop.Records.Count("outbox", "kind = 'Reminder' AND state = 'Sent'"));
        await _shop.Get<MailSender>().StopAsync(Token);
    }

    private bool IsCodeSent() => _shop.Records.Count("outbox", "kind = 'OwnPageCode' AND state = 'Sent'") == 1;

    [Fact]
    public async Task Mail_that_hangs_holds_up_those_behind_it_for_seconds_only()
    {
        var silent = true;
        _server.Says = (stage, _) => stage == MoodyServer.End && silent ? _server.Silence() : Task.FromResult<string?>(null);
        _shop.Queue(subject: "Hangs");
        _shop.Queue(subject: "Goes on");
        using var stop = new CancellationTokenSource();
        var sending = _shop.Get<MailSender>().SendAll(stop.Token);
        await MailShop.Until(() => _server.Whole.Count == 1);
        silent = false;

        await MailShop.Until(() =>
        {
            _shop.Clock.Advance(TimeSpan.FromSeconds(1));
            return _shop.MailStates() == "Leaving Sent";
        });

        Assert.True(_shop.Clock.GetUtcNow() - new DateTimeOffset(2026, 11, 25, 10, 0, 0, TimeSpan.Zero) < SmtpPatience.ForTheMail);
        await stop.CancelAsync();
        await sending;
    }

    [Fact]
    public async Task Finders_words_go_before_reminders_that_were_queued_earlier_and_codes_before_links()
    {
        _shop.Queue(MailKind.Reminder, "Reminder");
        _shop.Queue(MailKind.FoundNotice, "Found");
        _shop.Queue(MailKind.OwnPageLink, "Link");
        Code(client: 1);

        await _shop.Get<MailSender>().SendAll(Token);

        Assert.Equal(["Found", "Reminder"], Order("Found", "Reminder"));
        Assert.Equal(["Code", "Link"], Order("Code", "Link"));
    }

    [Fact]
    public async Task Code_that_ran_out_does_not_go_out_any_more()
    {
        _server.SaysAt(MoodyServer.Rcpt, () => Task.FromResult<string?>("451 come again"));
        Code(client: 1);
        await _shop.Get<MailSender>().SendAll(Token);
        _server.Says = (_, _) => Task.FromResult<string?>(null);

        _shop.Clock.Advance(TimeSpan.FromMinutes(10));
        await _shop.Get<MailSender>().SendAll(Token);

        Assert.Empty(_server.Whole);
        Assert.Equal("Failed|The code ran out before it could be sent.", _shop.Records.Text("SELECT state || '|' || last_error FROM outbox"));
    }

    [Fact]
    public async Task Mail_room_sends_by_itself_and_marks_what_it_could_not_as_soon_as_it_can()
    {
        var room = _shop.Get<MailSender>();
        _server.SaysAt(MoodyServer.End, () =>
        {
            _shop.Records.Change("CREATE TRIGGER stuck BEFORE UPDATE ON outbox BEGIN SELECT RAISE(ABORT, 'disk full'); END");
            return Task.FromResult<string?>(null);
        });
        _shop.Queue();
        await room.StartAsync(Token);
        await MailShop.Until(() => _server.Whole.Count == 1 && _shop.Log.All.Any(l => l.Contains("could not be written", StringComparison.Ordinal)));

        _shop.Records.Change("DROP TRIGGER stuck");
        await MailShop.Until(() =>
        {
            _shop.Clock.Advance(TimeSpan.FromSeconds(1));
            return _shop.MailStates() == "Sent";
        });
        await room.StopAsync(Token);

        Assert.Single(_server.Whole);
    }

    private void Code(long client)
    {
        _shop.Records.Change("INSERT INTO own_page_code (id, client_id, made_at, expires_at) VALUES (1, @client, @now, @until)",
            new { client, now = _shop.Clock.GetUtcNow(), until = _shop.Clock.GetUtcNow().AddMinutes(10) });
        _shop.Database.Write(c => _shop.Get<OutboxStore>().Queue(c, new NewMail(MailKind.OwnPageCode, client, "Code", "{code}") { CodeId = 1 }));
    }

    private IEnumerable<string> Order(params string[] of) => _server.Whole.Select(m => m.Subject!).Where(of.Contains);
}
