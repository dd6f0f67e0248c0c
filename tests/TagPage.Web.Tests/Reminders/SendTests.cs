using System.Text.RegularExpressions;
using MimeKit;
using SmtpServer.Protocol;
using TagPage.Records.Outbox;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Reminders;

/// <summary>Reminders as mail, through a real SMTP server in this process.</summary>
public sealed class SendTests : IAsyncDisposable
{
    private readonly PostOffice _post = PostOffice.Open();
    private TestShop _shop = null!;
    private Household _home = null!;
    private long _reminder;

    private MailSender Room => _shop.Get<MailSender>();

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public async ValueTask DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _post.DisposeAsync();
    }

    private void Open(string address = "https://tag.example")
    {
        _shop = new TestShop
        {
            Settings =
            {
                ["TagPage:Address"] = address,
                ["TagPage:Smtp:Host"] = "127.0.0.1",
                ["TagPage:Smtp:Port"] = $"{_post.Port}",
                ["TagPage:Smtp:Tls"] = "None",
            },
        };
        _home = new Household(_shop);
        _reminder = _shop.Records.Reminder(_home.Client, _home.Racket);
    }

    private async Task<WebPage> Mail()
    {
        var runa = _shop.Owner();
        return await runa.Send(await runa.Open($"/shop/nudges/mail/{_reminder}"));
    }

    [Fact]
    public async Task Reminder_goes_to_the_guardian_with_links_that_work_and_headers_of_one_click()
    {
        Open();
        await Mail();
        await Room.SendAll(Token);

        var mail = Assert.Single(_post.Received);
        Assert.Equal(OnFile.CanaryMail, mail.To.Mailboxes.Single().Address);
        Assert.Contains("Pim, racket 1", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains($"https://tag.example{_home.Link(_reminder)}", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains($"https://tag.example{_home.StopLink(_reminder)}", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains($"<a href=\"https://tag.example{_home.Link(_reminder)}\">", mail.HtmlBody, StringComparison.Ordinal);
        // RFC 8058, 3.1.
        Assert.Equal($"<https://tag.example{_home.StopLink(_reminder)}>", mail.Headers[HeaderId.ListUnsubscribe]);
        Assert.Equal("List-Unsubscribe=One-Click", mail.Headers[HeaderId.ListUnsubscribePost]);
    }

    [Fact]
    public async Task Without_https_there_is_the_plain_link_and_no_header()
    {
        Open("http://tag.example");
        await Mail();
        await Room.SendAll(Token);

        var mail = Assert.Single(_post.Received);
        Assert.Contains("http://tag.example/n/stop/", mail.TextBody, StringComparison.Ordinal);
        Assert.False(mail.Headers.Contains(HeaderId.ListUnsubscribe));
        Assert.False(mail.Headers.Contains(HeaderId.ListUnsubscribePost));
    }

    [Fact]
    public async Task It_is_the_client_who_is_written_to_and_not_the_payer()
    {
        Open();
        _shop.Records.Change("INSERT INTO payer (id, name, mail) VALUES (1, 'Academy', 'pay@academy.example'); UPDATE client SET payer_id = 1");
        await Mail();
        await Room.SendAll(Token);

        Assert.Equal([OnFile.CanaryMail], Assert.Single(_post.Received).GetRecipients().Select(m => m.Address));
    }

    [Fact]
    public async Task Pressed_twice_it_is_one_mail_and_the_second_press_is_told()
    {
        Open();
        await Mail();
        var second = await Mail();
        await Room.SendAll(Token);

        Assert.Contains("on its way or has already gone out", second.Main, StringComparison.Ordinal);
        Assert.Single(_post.Received);
    }

    [Fact]
    public async Task Stopped_while_it_waits_it_does_not_go_out_and_cannot_be_tried_again()
    {
        Open();
        await Mail();
        var odalys = _shop.Stranger();
        await odalys.Send(await odalys.Open(_home.StopLink(_reminder)));
        await Room.SendAll(Token);
        var runa = _shop.Owner();
        var list = await runa.Open("/shop/nudges");
        Assert.Contains("The client wants no more reminders.", list.Main, StringComparison.Ordinal);

        Assert.Empty(list.Document.QuerySelectorAll("form[action*='/retry/']"));

        Assert.Empty(_post.Received);
    }

    [Fact]
    public async Task Tick_of_the_shop_holds_back_what_waits_like_the_clients_own()
    {
        Open();
        await Mail();
        var runa = _shop.Owner();
        var form = await runa.Open($"/shop/clients/edit/{_home.Client}");
        form.Document.QuerySelector("[name='Input.Reminders'][type=checkbox]")!.RemoveAttribute("checked");
        Assert.Equal(System.Net.HttpStatusCode.Found, (await runa.Send(form, ("Input.Reminders", "false"))).Status);

        await Room.SendAll(Token);

        Assert.Empty(_post.Received);
        Assert.Contains("The client wants no more reminders.", (await runa.Open("/shop/nudges")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Refused_mail_is_shown_with_the_servers_words_and_goes_out_when_tried_again()
    {
        Open();
        _post.Answer = () => new SmtpResponse(SmtpReplyCode.MailboxUnavailable, "no such mailbox");
        await Mail();
        await Room.SendAll(Token);
        var runa = _shop.Owner();
        var list = await runa.Open("/shop/nudges");
        Assert.Contains("no such mailbox", list.Main, StringComparison.Ordinal);
        _post.Answer = () => SmtpResponse.Ok;

        await runa.Send(list);
        await Room.SendAll(Token);

        Assert.Single(_post.Received);
        Assert.Contains("mailed on 25 Nov 2026", (await runa.Open($"/shop/nudges/{_reminder}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Slow_server_gets_the_mail_once()
    {
        Open();
        var (taken, answer) = (new TaskCompletionSource(), new TaskCompletionSource());
        _post.BeforeAnswer = () =>
        {
            taken.TrySetResult();
            return answer.Task;
        };
        await Mail();

        var first = Room.SendAll(Token);
        await taken.Task.WaitAsync(Token);
        var second = Room.SendAll(Token);
        answer.SetResult();
        await Task.WhenAll(first, second);

        Assert.Single(_post.Received);
    }

    /// <summary>The process ends after the server accepted the second of three emails and before we noted it.</summary>
    [Fact]
    public async Task Killed_in_mid_batch_every_household_gets_its_mail_and_nobody_a_second_message_id()
    {
        Open();
        var others = Enumerable.Range(1, 2).Select(n => _shop.Records.Client($"Client {n}", mail: $"c{n}@client.example")).ToList();
        await Mail();
        foreach (var client in others)
        {
            var racket = _shop.Records.Racket(_shop.Records.Player(client, $"Player {client}"));
            _shop.Records.Job(racket, strungOn: new(2026, 9, 1));
            var runa = _shop.Owner();
            await runa.Send(await runa.Open($"/shop/nudges/mail/{_shop.Records.Reminder(client, racket)}"));
        }
        using var killed = new CancellationTokenSource();
        _post.BeforeAnswer = () => _post.Received.Count == 2 ? killed.CancelAsync() : Task.CompletedTask;
        await Room.SendAll(killed.Token);
        _post.BeforeAnswer = () => Task.CompletedTask;

        await Room.SendAll(Token);
        _shop.Clock.Advance(DeliveryStore.Rest);
        await Room.SendAll(Token);

        Assert.Equal(3, _post.Received.Select(m => m.MessageId).Distinct().Count());
        Assert.Equal(3, _post.Received.Select(m => m.To.ToString()).Distinct().Count());
        Assert.Equal(4, _post.Received.Count);
    }

    [Fact]
    public async Task Owners_own_words_go_out_as_written_and_as_they_are_meant_to_look_without_scripts()
    {
        Open();
        _shop.Records.OwnWords("Reminder",
            "**Hi** {client} <script>alert(1)</script>\n\n{rackets}\n\n[Answer here]({link})\n\n![x](https://img.example/a.png) [bad](javascript:alert(1)) {stop}", "Strings, {client}");
        await Mail();
        await Room.SendAll(Token);

        var mail = Assert.Single(_post.Received);
        Assert.Equal("Strings, Odalys Ferran", mail.Subject);
        Assert.Contains("**Hi** Odalys Ferran", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("<strong>Hi</strong>", mail.HtmlBody, StringComparison.Ordinal);
        Assert.Contains($"<a href=\"https://tag.example{_home.Link(_reminder)}\">Answer here</a>", mail.HtmlBody, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex("<script|<img|href=\"javascript"), mail.HtmlBody);
    }

    [Fact]
    public async Task The_mail_speaks_the_clients_language()
    {
        Open();
        _shop.Records.Change("UPDATE client SET language = 'de'");
        await Mail();
        await Room.SendAll(Token);

        Assert.StartsWith("Zeit für neue Saiten?", Assert.Single(_post.Received).Subject, StringComparison.Ordinal);
    }
}
