using TagPage.Records.Outbox;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>Mail servers that are slow, silent, rude or forgetful.</summary>
public sealed class PatienceTests : IAsyncDisposable
{
    private readonly MoodyServer _server = new();
    private readonly TestShop _shop;

    public PatienceTests() => _shop = MailShop.Of(_server.Port);

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public async ValueTask DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _server.DisposeAsync();
    }

    /// <summary>RFC 5321, section 4.5.3.2.</summary>
    [Fact]
    public void Patience_is_at_least_what_the_standard_asks_for()
    {
        Assert.True(SmtpPatience.ForAReply >= TimeSpan.FromMinutes(5));
        Assert.True(SmtpPatience.ForTheMail >= TimeSpan.FromMinutes(10));
    }

    [Theory]
    [InlineData(36)]
    [InlineData(590)]
    public async Task Server_that_answers_late_gets_the_mail_once(int seconds)
    {
        var answer = new TaskCompletionSource<string?>();
        _server.SaysAt(MoodyServer.End, () => answer.Task);
        _shop.Queue();
        var sending = Send();
        await MailShop.Until(() => _server.Whole.Count == 1);

        _shop.Clock.Advance(TimeSpan.FromSeconds(seconds));
        Assert.False(sending.IsCompleted);
        answer.SetResult(null);
        await sending;

        Assert.Equal("Sent", _shop.MailStates());
        await _shop.Looks(3);
        Assert.Single(_server.Whole);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Server_that_takes_the_mail_and_says_nothing_gets_it_once_more_and_then_the_owner_reads_that_nobody_knows(bool hangsUp)
    {
        _server.SaysAt(MoodyServer.End, () => hangsUp ? Task.FromResult<string?>(MoodyServer.HangsUp) : _server.Silence());
        _shop.Queue();

        await (hangsUp ? Send() : Outwait(MoodyServer.End));
        Assert.Equal("Queued", _shop.MailStates());
        Assert.Contains("maybe sent, goes out once more automatically", await List(), StringComparison.Ordinal);
        await _shop.Looks(3);
        Assert.Single(_server.Whole);

        _shop.Clock.Advance(DeliveryStore.Rest);
        await (hangsUp ? Send() : Outwait(MoodyServer.End));
        _shop.Clock.Advance(TimeSpan.FromDays(1));
        await _shop.Looks(3);

        Assert.Equal("MaybeSent", _shop.MailStates());
        Assert.Equal(2, _server.Whole.Count);
        Assert.Single(_server.Whole.Select(m => m.MessageId).Distinct());
        Assert.Contains("maybe sent: The mail server did not say whether it accepted the email.", await List(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Owner_may_have_a_mail_sent_again_of_which_nobody_knows()
    {
        _shop.Queue();
        _shop.Records.Change("UPDATE outbox SET state = 'MaybeSent', maybe_sent = 1");

        var runa = _shop.Owner();
        await runa.Send(await runa.Open("/shop/nudges"));
        await Send();

        Assert.Equal("Sent", _shop.MailStates());
        Assert.Single(_server.Whole);
    }

    [Fact]
    public async Task Refusal_of_the_second_copy_does_not_hide_that_the_first_may_have_arrived()
    {
        _server.SaysAt(MoodyServer.End, () => Task.FromResult<string?>(_server.Whole.Count == 1 ? MoodyServer.HangsUp : "554 no"));
        _shop.Queue();
        await Send();
        _shop.Clock.Advance(DeliveryStore.Rest);

        await Send();

        Assert.Equal("MaybeSent", _shop.MailStates());
    }

    [Theory]
    [InlineData(MoodyServer.Greeting, false)]
    [InlineData(MoodyServer.Greeting, true)]
    [InlineData(MoodyServer.Mail, false)]
    [InlineData(MoodyServer.Rcpt, true)]
    [InlineData(MoodyServer.Data, false)]
    [InlineData(MoodyServer.Data, true)]
    public async Task Server_that_says_nothing_before_it_got_the_mail_is_tried_again_like_one_that_is_away(string stage, bool hangsUp)
    {
        _server.SaysAt(stage, () => hangsUp ? Task.FromResult<string?>(MoodyServer.HangsUp) : _server.Silence());
        _shop.Queue();
        await (hangsUp ? Send() : Outwait(stage));

        Assert.Equal("0|1|Queued", _shop.Records.Text("SELECT maybe_sent || '|' || tries || '|' || state FROM outbox"));
        Assert.Empty(_server.Whole);

        _server.Says = (_, _) => Task.FromResult<string?>(null);
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        await Send();
        Assert.Equal("Sent", _shop.MailStates());
        Assert.Single(_server.Whole);
    }

    /// <summary>RFC 6647: a server that does not know the sender yet says 4yz and accepts the email when it comes again.</summary>
    [Theory]
    [InlineData(MoodyServer.Rcpt)]
    [InlineData(MoodyServer.Data)]
    [InlineData(MoodyServer.End)]
    public async Task Greylisted_mail_is_taken_at_its_second_try(string stage)
    {
        var asked = 0;
        _server.SaysAt(stage, () => Task.FromResult(asked++ == 0 ? "451 come again" : null));
        _shop.Queue();
        await Send();
        Assert.Equal("0|1|Queued", _shop.Records.Text("SELECT maybe_sent || '|' || tries || '|' || state FROM outbox"));

        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        await Send();

        Assert.Equal("Sent", _shop.MailStates());
    }

    /// <summary>RFC 5321, section 3.8: 421 goes with the end of the connection.</summary>
    [Fact]
    public async Task Refusal_followed_by_silence_is_a_refusal_all_the_same()
    {
        _server.Says = (stage, _) => Task.FromResult(stage switch { MoodyServer.End => "421 too busy", "RSET" => MoodyServer.HangsUp, _ => null });
        _shop.Queue();

        await Send();

        Assert.Equal("0|1|Queued", _shop.Records.Text("SELECT maybe_sent || '|' || tries || '|' || state FROM outbox"));
    }

    [Fact]
    public async Task Server_that_says_no_goodbye_has_the_mail_all_the_same()
    {
        _server.SaysAt(MoodyServer.Quit, _server.Silence);
        _shop.Queue();

        await Outwait(MoodyServer.Quit);

        Assert.Equal("Sent", _shop.MailStates());
        await _shop.Looks(3);
        Assert.Single(_server.Whole);
    }

    [Fact]
    public async Task Stop_before_the_server_got_anything_is_no_try()
    {
        _server.SaysAt(MoodyServer.Rcpt, _server.Silence);
        _shop.Queue();
        using var stop = new CancellationTokenSource();
        var sending = _shop.Get<MailSender>().SendAll(stop.Token);
        await MailShop.Until(() => _shop.MailStates() == "Leaving");

        await stop.CancelAsync();
        await sending;

        Assert.Equal("0|0|Queued", _shop.Records.Text("SELECT maybe_sent || '|' || tries || '|' || state FROM outbox"));
    }

    private Task Send() => _shop.Get<MailSender>().SendAll(Token);

    /// <summary>Sends to a server that stays silent at one stage, until the program gives up.</summary>
    private async Task Outwait(string stage)
    {
        var before = Reached(stage);
        var sending = Send();
        await MailShop.Until(() => Reached(stage) > before);
        _shop.Clock.Advance(stage == MoodyServer.End ? SmtpPatience.ForTheMail : SmtpPatience.ForAReply);
        await sending.WaitAsync(TimeSpan.FromSeconds(20), Token);
    }

    private int Reached(string stage) => _server.Stages.Count(s => s == stage);

    private async Task<string> List() => (await _shop.Owner().Open("/shop/nudges")).Main;
}
