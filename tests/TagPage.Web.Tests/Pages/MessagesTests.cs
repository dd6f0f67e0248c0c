using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Ready to be collected, we got your request: the words, and how they go out.</summary>
public sealed class MessagesTests : IDisposable
{
    private const string Settings = "/shop/settings/messages";

    private readonly TestShop _shop = new();
    private readonly Visitor _runa;
    private readonly long _odalys, _racket, _job;

    public MessagesTests()
    {
        _shop.Records.Shop();
        (_odalys, _, _racket, _, _job) = _shop.Records.Family();
        _shop.Records.Change("UPDATE job SET state = 'Strung', collected_on = NULL WHERE id = @_job", new { _job });
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Client_is_told_once_that_the_racket_is_ready_with_price_and_hours()
    {
        var page = await _runa.Open($"/shop/jobs/ready/{_job}");
        await _runa.Send(page);
        var again = await _runa.Send(page);

        var mail = Assert.Single(await _shop.MailsSent());
        foreach (var words in new[] { "Pim, racket 1: the new strings are in", "Price: £24.50.", "Saturday 9:00–13:00" })
            Assert.Contains(words, mail, StringComparison.Ordinal);
        Assert.Contains("already been told", again.Main, StringComparison.Ordinal);
        Assert.Contains("client told on 25 Nov 2026", (await _runa.Open($"/shop/jobs/{_job}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticket_says_that_the_email_is_refused_for_now_and_not_that_the_client_was_told()
    {
        await _runa.Send(await _runa.Open($"/shop/jobs/ready/{_job}"));
        _shop.Records.Change("UPDATE outbox SET state = 'Queued', tries = 1, last_error = 'try again later'");

        var ticket = await _runa.Open($"/shop/jobs/{_job}");

        Assert.DoesNotContain("client told on", ticket.Main, StringComparison.Ordinal);
        Assert.Contains("email that it is ready on its way, written on 25 Nov 2026", ticket.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticket_and_bench_say_that_the_email_was_refused_and_offer_to_tell_the_client_again()
    {
        await _runa.Send(await _runa.Open($"/shop/jobs/ready/{_job}"));
        _shop.Records.Change("UPDATE outbox SET state = 'Failed', last_error = 'no such mailbox'");

        var ticket = await _runa.Open($"/shop/jobs/{_job}");

        Assert.DoesNotContain("client told on", ticket.Main, StringComparison.Ordinal);
        Assert.Contains("the email that it is ready could not be sent", ticket.Main, StringComparison.Ordinal);
        Assert.NotNull(ticket.Document.QuerySelector($"main a[href='/shop/jobs/ready/{_job}']"));
        Assert.Contains("email that it is ready not sent", (await _runa.Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("UPDATE job SET paid_on = '2026-11-20'", "Price: already paid.")]
    [InlineData("INSERT INTO payer (id, name) VALUES (1, 'Eastmere Academy'); UPDATE client SET payer_id = 1", null)]
    [InlineData("INSERT INTO payer (id, name) VALUES (1, 'Eastmere Academy'); UPDATE client SET payer_id = 1; UPDATE job SET paid_on = '2026-11-20'", null)]
    [InlineData("DELETE FROM charge; UPDATE job SET price_minor = NULL", null)]
    public async Task Price_that_is_paid_is_said_to_be_and_one_that_is_not_the_clients_is_not_spoken_of(string change, string? says)
    {
        _shop.Records.Change(change);

        await _runa.Send(await _runa.Open($"/shop/jobs/ready/{_job}"));

        var mail = Assert.Single(await _shop.MailsSent());
        if (says is null)
            Assert.DoesNotContain("Price", mail, StringComparison.Ordinal);
        else
            Assert.Contains(says, mail, StringComparison.Ordinal);
        Assert.Contains("ready to collect.", mail, StringComparison.Ordinal);
        foreach (var wrong in new[] { "24.50", "nothing to pay", "–\n" })
            Assert.DoesNotContain(wrong, mail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Words_are_in_the_clients_language_unless_the_owner_wrote_their_own()
    {
        _shop.Records.Change("UPDATE client SET language = 'es'");
        Assert.Contains("ya tiene las cuerdas nuevas", (await _runa.Open($"/shop/jobs/ready/{_job}")).Main, StringComparison.Ordinal);

        await _runa.Send(await _runa.Open(Settings), ("Input.ReadySubject", "Come for {racket}"), ("Input.ReadyMarkdown", "Hi {client}, **{racket}** waits, {price}."));

        var page = await _runa.Open($"/shop/jobs/ready/{_job}");
        Assert.Contains("Come for Pim", page.Main, StringComparison.Ordinal);
        await _runa.Send(page);
        await _shop.MailsSent();
        var mail = await MimeKit.MimeMessage.LoadAsync(Directory.GetFiles(Path.Combine(_shop.Folder, "mail")).Single(), TestContext.Current.CancellationToken);
        Assert.Contains("<strong>Pim", mail.HtmlBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Own_words_answer_a_request_too()
    {
        await _runa.Send(await _runa.Open(Settings), ("Input.ReceivedSubject", "Got it"), ("Input.ReceivedMarkdown", "Thanks {client} for {racket}."));
        _shop.Records.Change("UPDATE job SET state = 'Collected', collected_on = strung_on");
        var odalys = await _shop.OnOwnPage(_odalys);

        await odalys.Send(await odalys.Open($"/my/order/{_racket}"));

        Assert.Equal("Got it", _shop.Records.Text("SELECT subject FROM outbox"));
        Assert.Equal("Thanks Odalys Ferran for Pim, racket 1.", Assert.Single(await _shop.MailsSent()).Trim());
    }

    [Theory]
    [InlineData("Input.ReadyMarkdown", "Hi {name}", "{name} means nothing here")]
    [InlineData("Input.QuietFromHour", "24", "Enter an hour from 0 to 23")]
    [InlineData("Input.QuietUntilHour", "", "Enter an hour from 0 to 23")]
    public async Task What_does_not_fit_is_said_and_nothing_is_saved(string field, string value, string said)
    {
        var before = _shop.Database.Dump();

        var page = await _runa.Send(await _runa.Open(Settings), (field, value));

        Assert.Contains(said, Assert.Single(page.Errors), StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Theory]
    [InlineData("UPDATE client SET mail = NULL", "No email can be sent")]
    [InlineData("UPDATE job SET state = 'Collected', collected_on = strung_on", "not waiting to be collected")]
    public async Task Where_nothing_can_be_told_it_says_why(string change, string why)
    {
        var page = await _runa.Open($"/shop/jobs/ready/{_job}");
        _shop.Records.Change(change);

        Assert.Contains(why, (await _runa.Send(page)).Main, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("outbox"));
    }

    [Theory]
    [InlineData("Input.NoticeText", "Dear {client}", "Put {events} where the email should say what finders did.")]
    [InlineData("Input.NoticeText", "{events} {racket}", "{racket} means nothing here. You can use: {client}, {shop}, {events}.")]
    [InlineData("Input.NoticeSubject", "{events}", "{events} means nothing here. You can use: {client}, {shop}.")]
    public async Task Notice_without_what_happened_is_refused_at_its_field(string field, string typed, string sentence)
    {
        var before = _shop.Database.Dump();

        var page = await _runa.Send(await _runa.Open(Settings), (field, typed));

        Assert.Equal(sentence, Assert.Single(page.Errors));
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Own_words_of_a_notice_are_kept()
    {
        await _runa.Send(await _runa.Open(Settings), ("Input.NoticeSubject", "News, {client}"), ("Input.NoticeText", "Hello {client}. {events}"));

        Assert.Equal("News, {client}|Hello {client}. {events}", _shop.Records.Text("SELECT subject || '|' || words FROM message WHERE purpose = 'Notice'"));
    }
}
