using System.Net;
using TagPage.Records.Outbox;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Reminders;

/// <summary>The private links: what they give away, what they withstand, and when they end.</summary>
public sealed class LinkTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Household _home;
    private readonly long _reminder;

    public LinkTests()
    {
        _home = new Household(_shop);
        _reminder = _shop.Records.Reminder(_home.Client, _home.Racket);
    }

    public void Dispose() => _shop.Dispose();

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Opened_fifty_times_by_scanners_no_link_changes_anything_or_gives_a_session()
    {
        var before = _shop.Database.Dump();

        foreach (var link in new[] { _home.Link(_reminder), _home.StopLink(_reminder) })
            for (var n = 0; n < 50; n++)
                foreach (var method in new[] { HttpMethod.Get, HttpMethod.Head })
                {
                    using var request = new HttpRequestMessage(method, link);
                    var answer = await _shop.Stranger().Client.SendAsync(request, Token);
                    Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
                    Assert.DoesNotContain(answer.Headers.TryGetValues("Set-Cookie", out var cookies) ? cookies : [], c => !c.StartsWith("__Host-form=", StringComparison.Ordinal));
                    Assert.True(answer.Headers.CacheControl?.NoStore);
                }

        Assert.Equal(before, _shop.Database.Dump());
    }

    [Theory]
    [InlineData("UPDATE reminder SET discarded = 1")]
    [InlineData("UPDATE reminder SET secret = lower(hex(randomblob(16)))")]
    [InlineData("UPDATE reminder SET expires_at = '2026-11-25T09:59:59.000Z'")]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at) SELECT client_id, made_at, expires_at FROM reminder")]
    [InlineData("DELETE FROM reminder")]
    public async Task Link_that_was_taken_back_replaced_or_has_run_out_opens_nothing_and_takes_nothing(string change)
    {
        var odalys = _shop.Stranger();
        var page = await odalys.Open(_home.Link(_reminder));
        _shop.Records.Change(change);
        var before = _shop.Database.Dump();

        var answer = await odalys.Send(page, ("Input.Rackets[0].Answer", "Gone"));

        Assert.Equal(HttpStatusCode.NotFound, answer.Status);
        Assert.Contains("This link no longer works", answer.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", Readable.Of(answer.Text), StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Tokens_that_were_never_given_out_open_nothing()
    {
        var good = _home.Link(_reminder)[3..];
        string[] bad =
        [
            good[..^1] + (good[^1] == 'A' ? 'Q' : 'A'), "2" + good[1..], good + "A", good[..^1], good.ToUpperInvariant(), "1-", "-1", "1", "1-" + new string('A', 22),
            "99999999999999999999-AAAAAAAAAAAAAAAAAAAAAA", _home.StopLink(_reminder)["/n/stop/".Length..], _shop.Get<LinkTokens>().Token(LinkPurpose.AnswerFinder, _reminder, _home.Value("SELECT secret FROM reminder")!),
        ];
        foreach (var token in bad.Where(t => t != good))
        {
            var page = await _shop.Stranger().Open("/n/" + token);
            Assert.Equal(HttpStatusCode.NotFound, page.Status);
            Assert.DoesNotContain("Pim", Readable.Of(page.Text), StringComparison.Ordinal);
        }
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Open("/n/stop/" + good)).Status);
    }

    [Fact]
    public async Task Answer_from_a_page_of_somebody_else_is_not_taken()
    {
        var before = _shop.Database.Dump();
        using var form = new FormUrlEncodedContent([new("Input.Rackets[0].RacketId", $"{_home.Racket}"), new("Input.Rackets[0].Answer", "Gone")]);

        var answer = await _shop.Stranger().Client.PostAsync(new Uri(_home.Link(_reminder), UriKind.Relative), form, Token);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(before, _shop.Database.Dump());
    }

    /// <summary>RFC 8058, 3.2: a POST with this body, without cookies, and no redirect for an answer.</summary>
    [Fact]
    public async Task Mail_program_stops_the_reminders_with_one_press_and_can_do_so_again()
    {
        for (var n = 0; n < 2; n++)
        {
            using var body = new FormUrlEncodedContent([new("List-Unsubscribe", "One-Click")]);
            var answer = await _shop.Stranger().Client.PostAsync(new Uri(_home.StopLink(_reminder), UriKind.Relative), body, Token);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.False(answer.Headers.Contains("Set-Cookie"));
        }

        Assert.Equal("0", _home.Value("SELECT reminders FROM client"));
    }

    [Theory]
    [InlineData("UPDATE reminder SET discarded = 1")]
    [InlineData("UPDATE reminder SET expires_at = '2026-01-01T00:00:00.000Z'")]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at) SELECT client_id, made_at, expires_at FROM reminder")]
    public async Task Stop_link_works_from_every_mail_however_old(string change)
    {
        _shop.Records.Change(change);
        var odalys = _shop.Stranger();

        await odalys.Send(await odalys.Open(_home.StopLink(_reminder)));

        Assert.Equal("0", _home.Value("SELECT reminders FROM client"));
    }

    [Fact]
    public async Task Stop_link_stops_and_shows_nothing_of_the_household()
    {
        var page = await _shop.Stranger().Open(_home.StopLink(_reminder));

        Assert.DoesNotContain("Odalys", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", Readable.Of(page.Text), StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_log_line_and_no_table_holds_a_token()
    {
        var runa = _shop.Owner();
        await runa.Send(await runa.Open($"/shop/nudges/mail/{_reminder}"));
        await _shop.Get<MailSender>().SendAll(Token);
        await _home.Answer(_reminder, "NotYet");
        await _shop.Stranger().Get(_home.Link(_reminder));
        await _shop.Stranger().Get(_home.Link(_reminder) + "x");
        var odalys = _shop.Stranger();
        await odalys.Send(await odalys.Open(_home.StopLink(_reminder)));
        string[] secrets = [_home.Link(_reminder).Split('-', 2)[1], _home.StopLink(_reminder).Split('-', 2)[1]];

        Assert.All(secrets, secret => Assert.DoesNotContain(_shop.Log.All, line => line.Contains(secret, StringComparison.Ordinal)));
        var records = _shop.Database.Dump();
        Assert.All(secrets, secret => Assert.DoesNotContain(secret, records, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Forged_host_gets_into_no_link()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, $"/shop/nudges/{_reminder}");
        request.Headers.Host = "evil.example";
        var page = await WebPage.Of(await _shop.Owner().Client.SendAsync(request, Token), "");

        Assert.DoesNotContain("evil.example", page.Text, StringComparison.Ordinal);
        Assert.Contains("https://tag.example/n/", page.Text, StringComparison.Ordinal);
    }
}
