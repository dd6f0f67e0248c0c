using Dapper;
using SmtpServer.Protocol;
using TagPage.Records.Outbox;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>Real SMTP exchanges with a server in this process; the mail sender is driven by hand.</summary>
public sealed class MailSenderTests : IAsyncDisposable
{
    private readonly PostOffice _post = PostOffice.Open();
    private readonly TestShop _shop;

    public MailSenderTests()
    {
        _shop = new TestShop
        {
            Settings =
            {
                ["TagPage:Smtp:Host"] = "127.0.0.1",
                ["TagPage:Smtp:Port"] = $"{_post.Port}",
                ["TagPage:Smtp:Tls"] = "None",
            },
        };
        _shop.Database.Write(c => c.Execute("""
            INSERT INTO shop (id, name, phone, mail, country, time_zone, currency, tension_unit)
            VALUES (1, 'Heron Lane Strings', '+442079460958', 'shop@heron.example', 'GB', 'Europe/London', 'GBP', 'Lb');
            INSERT INTO client (id, name, mail) VALUES (1, 'Zoë Ng', 'zoe@client.example');
            """));
    }

    private MailSender Room => _shop.Get<MailSender>();

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public async ValueTask DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _post.DisposeAsync();
    }

    [Fact]
    public async Task Queued_mail_arrives_once_from_the_shop_with_its_words_whole()
    {
        Queue("Restring time – Zoë", "Grüße, 張さん\n.\nThe end");

        await Room.SendAll(Token);
        await Room.SendAll(Token);

        var mail = Assert.Single(_post.Received);
        Assert.Equal("shop@heron.example", mail.From.Mailboxes.Single().Address);
        Assert.Equal("shop@heron.example", mail.ReplyTo.Mailboxes.Single().Address);
        Assert.Equal("zoe@client.example", mail.To.Mailboxes.Single().Address);
        Assert.Equal("Restring time – Zoë", mail.Subject);
        Assert.Equal("Grüße, 張さん\n.\nThe end", mail.TextBody!.Trim().ReplaceLineEndings("\n"));
        Assert.Equal("Sent", State());
    }

    [Fact]
    public async Task Refusal_for_now_is_tried_again_after_a_pause_and_not_before()
    {
        Queue("Hello", "…");
        // RFC 5321, section 4.2.1: 4yz is for now, 5yz is for good.
        _post.Answer = () => new SmtpResponse((SmtpReplyCode)451, "try later");

        await Room.SendAll(Token);
        Assert.Equal("Queued", State());
        _post.Answer = () => SmtpResponse.Ok;
        await Room.SendAll(Token);
        Assert.Empty(_post.Received);

        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        await Room.SendAll(Token);
        Assert.Single(_post.Received);
        Assert.Equal("Sent", State());
    }

    [Fact]
    public async Task Refusal_for_good_is_not_repeated_and_its_words_are_kept_for_the_owner()
    {
        _post.Answer = () => new SmtpResponse(SmtpReplyCode.MailboxUnavailable, "no such mailbox");
        Queue("Hello", "…");

        await Room.SendAll(Token);
        _shop.Clock.Advance(TimeSpan.FromDays(2));
        await Room.SendAll(Token);

        Assert.Equal("Failed", State());
        Assert.Equal(1, _shop.Database.Read(c => c.ExecuteScalar<int>("SELECT tries FROM outbox")));
        Assert.Contains("no such mailbox", _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT last_error FROM outbox")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Server_that_is_away_for_days_ends_in_a_failure_the_owner_sees()
    {
        await _post.Close();
        Queue("Hello", "…");

        for (var i = 0; i < DeliveryStore.MostTries; i++)
        {
            await Room.SendAll(Token);
            _shop.Clock.Advance(TimeSpan.FromHours(9));
        }

        Assert.Equal("Failed", State());
    }

    [Fact]
    public async Task Stop_before_the_server_answered_sends_the_same_mail_once_more_after_a_rest_and_never_none()
    {
        using var cut = new CancellationTokenSource();
        // The server has the email; the program stops before it learns that.
        _post.BeforeAnswer = () => cut.CancelAsync();
        Queue("Hello", "…");
        await Room.SendAll(cut.Token);
        Assert.Equal("Queued", State());
        _post.BeforeAnswer = () => Task.CompletedTask;

        await Room.SendAll(Token);
        Assert.Single(_post.Received);
        _shop.Clock.Advance(DeliveryStore.Rest);
        await Room.SendAll(Token);

        Assert.Equal(2, _post.Received.Count);
        Assert.Single(_post.Received.Select(m => m.MessageId).Distinct());
        Assert.Equal("Sent", State());
    }

    [Fact]
    public async Task Client_without_an_address_is_a_failure_with_a_plain_sentence()
    {
        _shop.Database.Write(c => c.Execute("UPDATE client SET mail = NULL"));
        Queue("Hello", "…");

        await Room.SendAll(Token);

        Assert.Equal("Failed", State());
        Assert.Equal("The client has no email address on file.", _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT last_error FROM outbox")));
    }

    [Fact]
    public async Task Line_breaks_in_a_name_or_subject_make_no_header_of_their_own()
    {
        _shop.Database.Write(c => c.Execute("UPDATE client SET name = 'Zoë\r\nBcc: all@evil.example'"));
        Queue("Hello\r\nBcc: all@evil.example", "…");

        await Room.SendAll(Token);

        var mail = Assert.Single(_post.Received);
        Assert.Empty(mail.Bcc);
        Assert.Single(mail.To.Mailboxes);
        Assert.DoesNotContain(mail.Headers, h => h.Field.Equals("Bcc", StringComparison.OrdinalIgnoreCase));
    }

    private void Queue(string subject, string body) =>
        _shop.Database.Write(c => _shop.Get<OutboxStore>().Queue(c, new NewMail(MailKind.FoundNotice, 1, subject, body)));

    private string? State() => _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT state FROM outbox"));
}
