using System.Net;
using TagPage.Records.Outbox;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>The private link to a client's own page: what looking does, what the press does, and when it ends.</summary>
public sealed class PrivateLinkTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _odalys;
    private readonly string _link;

    public PrivateLinkTests()
    {
        _shop.Records.Shop();
        _odalys = _shop.Records.Family().Client;
        _link = _shop.OwnPageLink(_odalys);
    }

    public void Dispose() => _shop.Dispose();

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Looked_at_fifty_times_by_scanners_and_previews_it_changes_nothing_and_gives_no_session()
    {
        var before = _shop.Database.Dump();

        for (var n = 0; n < 50; n++)
            foreach (var method in new[] { HttpMethod.Get, HttpMethod.Head })
            {
                using var request = new HttpRequestMessage(method, _link);
                var answer = await _shop.Stranger().Client.SendAsync(request, Token);
                Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
                Assert.DoesNotContain(answer.Headers.TryGetValues("Set-Cookie", out var cookies) ? cookies : [], c => c.Contains("corner", StringComparison.Ordinal));
                Assert.Contains("no-store", answer.Headers.CacheControl?.ToString(), StringComparison.Ordinal);
            }

        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Press_gives_this_browser_a_session_at_a_clean_address()
    {
        var odalys = _shop.Stranger();

        var answer = await odalys.Send(await odalys.Open(_link));

        Assert.Equal("/my", answer.Location);
        var cookie = Assert.Single(answer.Response.Headers.GetValues("Set-Cookie"));
        Assert.StartsWith("__Host-corner=", cookie, StringComparison.Ordinal);
        foreach (var rule in new[] { "; secure", "; httponly", "; path=/", "; samesite=lax", "max-age=2592000" })
            Assert.Contains(rule, cookie, StringComparison.OrdinalIgnoreCase);
        Assert.True(await odalys.IsOnOwnPage());
    }

    [Fact]
    public async Task Page_before_the_press_names_nobody()
    {
        var page = await _shop.Stranger().Open(_link);

        Assert.DoesNotContain("Odalys", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", Readable.Of(page.Text), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Session_ends_after_thirty_days_and_the_link_after_four_hundred()
    {
        var odalys = await _shop.Stranger().Enters(_link);
        _shop.Clock.Advance(TimeSpan.FromDays(30));
        Assert.False(await odalys.IsOnOwnPage());

        await odalys.Enters(_link);
        _shop.Clock.Advance(TimeSpan.FromDays(370));

        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Open(_link)).Status);
    }

    [Fact]
    public async Task Link_taken_back_by_the_shop_opens_nothing_and_ends_what_it_opened()
    {
        var odalys = await _shop.Stranger().Enters(_link);
        var late = _shop.Stranger();
        var page = await late.Open(_link);
        var (runa, id) = (_shop.Owner(), LinkTokens.Claimed(_link[4..]));
        var shown = await runa.Open($"/shop/corner/link/{id}");
        await runa.Send(shown, shown.Form($"/shop/corner/link/{id}?handler=Revoke"));

        var answer = await late.Send(page);

        Assert.Equal(HttpStatusCode.NotFound, answer.Status);
        Assert.False(await odalys.IsOnOwnPage());
        Assert.False(await late.IsOnOwnPage());
        Assert.Equal(0, _shop.Records.Count("own_page_session"));
    }

    [Fact]
    public async Task Press_without_the_pages_form_token_gives_no_session()
    {
        using var content = new FormUrlEncodedContent([new("x", "y")]);
        var answer = await _shop.Stranger().Client.PostAsync(new Uri(_link, UriKind.Relative), content, Token);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(0, _shop.Records.Count("own_page_session"));
    }

    [Fact]
    public async Task Tokens_that_were_never_given_out_open_nothing()
    {
        var good = _link[4..];
        var (keys, secret) = (_shop.Get<LinkTokens>(), _shop.Records.Text("SELECT secret FROM own_page_link"));
        string[] bad = [good + "A", good[..^1], "9" + good, "1-", "1", "1-" + new string('A', 22), keys.Token(LinkPurpose.AnswerFinder, 1, secret), keys.Token(LinkPurpose.Reminder, 1, secret)];

        foreach (var token in bad)
            Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Open("/my/" + token)).Status);
    }

    [Fact]
    public async Task Neither_log_nor_records_hold_the_link_or_the_cookie()
    {
        var odalys = _shop.Stranger();
        var answer = await odalys.Send(await odalys.Open(_link));
        await odalys.Get("/my");
        await odalys.Get(_link + "x");
        var cookie = answer.Response.Headers.GetValues("Set-Cookie").Single().Split('=', ';')[1];
        var records = _shop.Database.Dump();

        foreach (var secret in new[] { _link.Split('-', 2)[1], cookie })
        {
            Assert.DoesNotContain(_shop.Log.All, line => line.Contains(secret, StringComparison.Ordinal));
            Assert.DoesNotContain(secret, records, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Made_up_cookie_opens_nothing()
    {
        var mallory = _shop.Stranger();
        mallory.Client.DefaultRequestHeaders.Add("Cookie", "__Host-corner=AAAAAAAAAAAAAAAAAAAAAA");

        Assert.Equal("/my/link", (await mallory.Open("/my")).Location);
    }

    [Theory]
    [InlineData("/my")]
    [InlineData("/my/link")]
    [InlineData("/my/1-AAAAAAAAAAAAAAAAAAAAAA")]
    public async Task Over_plain_http_on_a_network_it_says_that_it_needs_https(string address)
    {
        var answer = await _shop.Stranger("192.168.1.20", "http://192.168.1.5:5080").Open(address);

        Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
        Assert.Contains("This page needs https", answer.Main, StringComparison.Ordinal);
        Assert.False(answer.Response.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task OwnPage_speaks_the_clients_language_and_every_other_when_asked()
    {
        _shop.Records.Change("UPDATE client SET language = 'es'");

        var odalys = await _shop.Stranger().Enters(_link);

        Assert.Contains("Sus raquetas", (await odalys.Open("/my")).Main, StringComparison.Ordinal);
        var english = await odalys.Open("/my?lang=en");
        Assert.Contains("Your rackets", english.Main, StringComparison.Ordinal);
        Assert.Contains(english.Document.QuerySelectorAll("header a"), a => a.GetAttribute("href") == "/my/sign-out?lang=en");
    }

    public static TheoryData<string> Codes => [.. Languages.All.Select(l => l.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public async Task Client_reads_the_own_page_in_the_language_on_file_and_is_offered_all(string code)
    {
        _shop.Records.Change($"UPDATE client SET language = '{code}'");

        var page = (await (await _shop.Stranger().Enters(_link)).Open("/my")).Document;

        Assert.Equal(code, page.DocumentElement.GetAttribute("lang"));
        Assert.Equal(OwnPageWords.Of(Languages.Of(code)!).Home.Heading, page.QuerySelector("h1")!.TextContent);
        Assert.Equal(Languages.All.Select(l => l.Code), page.QuerySelectorAll(".languages a").Select(a => a.GetAttribute("lang")!));
    }
}
