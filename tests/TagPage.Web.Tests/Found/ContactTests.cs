using System.Net;
using PhoneNumbers;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Found;

/// <summary>One press shows the contact; the numbers are those of the product's limits.</summary>
public sealed class ContactTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _code;

    public ContactTests()
    {
        _shop.Records.Shop();
        _code = _shop.Records.Family().Tag;
        _shop.Records.Agree("Contact");
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Press_shows_the_number_as_a_call_button_and_keeps_the_mail_address_back()
    {
        var page = await _shop.Stranger().AskForContact(_code);

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.True(page.Response.Headers.CacheControl!.NoStore);
        var call = page.Document.QuerySelector("main a.primary")!;
        Assert.Equal("Call +44 20 7946 0958", call.TextContent.Trim());
        Assert.Equal("tel:+44-20-7946-0958", call.GetAttribute("href"));
        Assert.DoesNotContain(OnFile.CanaryMail, page.Text, StringComparison.Ordinal);
        foreach (var name in new[] { "Odalys", "Ferran", "Pim", "Pellmore", "canary" })
            Assert.DoesNotContain(name, page.Main, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(1, _shop.Records.Events("kind = 'Shown'"));
    }

    [Fact]
    public async Task Mail_address_is_shown_where_that_was_agreed_to_as_well()
    {
        _shop.Records.Agree("Contact", mail: true);

        var page = await _shop.Stranger().AskForContact(_code);

        Assert.NotNull(page.Document.QuerySelector("main a[href='mailto:odalys@canary.example']"));
    }

    /// <summary>Checked with libphonenumber's own parser, in every country whose example number it knows; the form is RFC 3966, section 3.</summary>
    [Fact]
    public async Task Every_countrys_number_is_one_that_dials_as_shown()
    {
        var library = PhoneNumberUtil.GetInstance();
        foreach (var country in new[] { "CH", "US", "GB", "AU", "JP", "CN", "BR", "IT", "FR", "DE", "ES", "IN" })
        {
            var number = library.GetExampleNumberForType(country, PhoneNumberType.MOBILE);
            _shop.Records.Change("UPDATE client SET phone = @phone", new { phone = library.Format(number, PhoneNumberFormat.E164) });
            _shop.Records.Agree("Contact");
            _shop.Records.Change("DELETE FROM found_event");

            var href = (await _shop.Stranger().AskForContact(_code)).Document.QuerySelector("main a.primary")!.GetAttribute("href")!;

            Assert.Matches(@"^tel:\+[0-9]+(-[0-9]+)*$", href);
            Assert.Equal(number, library.Parse(href, "ZZ"));
        }
    }

    [Fact]
    public async Task Consent_withdrawn_between_page_and_press_shows_the_shop_and_logs_nothing()
    {
        var finder = _shop.Stranger();
        var page = await finder.FoundPage(_code);
        var owner = _shop.Owner();
        var client = await owner.Open("/shop/clients/1");
        await owner.Send(client, client.Form("?handler=Withdraw"));

        var answer = await finder.PressContact(page);

        AssertShopOnly(answer);
        Assert.Equal((0, 0), (_shop.Records.Events(), _shop.Records.Count("outbox")));
    }

    [Theory]
    [InlineData("UPDATE client SET found_choice = 'Message'")]
    [InlineData("UPDATE racket SET lost_since = NULL, lost_note = ''")]
    [InlineData("UPDATE tag SET found_blocked_at = '2026-11-25T00:00:00.000Z'")]
    [InlineData("UPDATE tag SET state = 'Retired', retired_at = '2026-11-25T00:00:00.000Z'")]
    [InlineData("UPDATE client SET phone = NULL")]
    public async Task Whatever_closes_between_page_and_press_shows_nothing(string change)
    {
        var finder = _shop.Stranger();
        var page = await finder.FoundPage(_code);
        _shop.Records.Change(change);

        AssertShopOnly(await finder.PressContact(page));
        Assert.Equal(0, _shop.Records.Events());
    }

    [Fact]
    public async Task Pressing_again_within_ten_minutes_shows_it_again_and_neither_counts_nor_mails()
    {
        var finder = _shop.Stranger();
        var page = await finder.FoundPage(_code);
        for (var n = 0; n < 12; n++)
            AssertShown(await finder.PressContact(page));
        AssertShown(await finder.AskForContact(_code));
        Assert.Equal((1, 1), (_shop.Records.Events(), _shop.Records.Count("outbox")));

        _shop.Clock.Advance(TimeSpan.FromMinutes(61));
        AssertShown(await finder.PressContact(page));

        Assert.Equal(2, _shop.Records.Events());
    }

    [Fact]
    public async Task Fourth_showing_of_a_tag_within_an_hour_gives_the_shop_instead()
    {
        for (var n = 1; n <= 3; n++)
            AssertShown(await _shop.Stranger($"198.51.100.{n}").AskForContact(_code));

        AssertShopOnly(await _shop.Stranger("198.51.100.4").AskForContact(_code), "asked for very often");
        Assert.Equal(3, _shop.Records.Events());
        _shop.Clock.Advance(TimeSpan.FromMinutes(61));
        AssertShown(await _shop.Stranger("198.51.100.4").AskForContact(_code));
    }

    [Fact]
    public async Task Sixth_showing_to_a_source_within_an_hour_gives_the_shop_instead_whatever_it_says_about_itself()
    {
        var codes = Enumerable.Range(2, 6).Select(n => _shop.Records.LiveTag(_shop.Records.Racket(1, n))).ToList();
        _shop.Records.Agree("Contact");
        for (var n = 0; n < 5; n++)
            AssertShown(await _shop.Stranger().AskForContact(codes[n]));

        var liar = _shop.Stranger();
        liar.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "192.0.2.44");
        AssertShopOnly(await liar.AskForContact(codes[5]), "asked for very often");

        AssertShown(await _shop.Stranger("198.51.100.9").AskForContact(codes[5]));
    }

    [Fact]
    public async Task Forwarded_address_counts_where_the_shops_own_proxy_says_it()
    {
        for (var n = 0; n < 2; n++)
        {
            var behind = _shop.Stranger("127.0.0.1");
            behind.Client.DefaultRequestHeaders.Add("X-Forwarded-For", $"192.0.2.{n}");
            AssertShown(await behind.AskForContact(_code));
        }

        Assert.Equal("2", _shop.Records.Text("SELECT COUNT(DISTINCT source) FROM found_event"));
        Assert.Equal("0", _shop.Records.Text("SELECT COUNT(*) FROM found_event WHERE source LIKE '%192.0.2%' OR source LIKE '%127.0%'"));
    }

    [Fact]
    public async Task Twenty_showings_a_day_are_the_most_for_a_tag()
    {
        for (var n = 0; n < 20; n++)
        {
            AssertShown(await _shop.Stranger($"198.51.100.{n + 1}").AskForContact(_code));
            _shop.Clock.Advance(TimeSpan.FromMinutes(30));
        }

        AssertShopOnly(await _shop.Stranger("198.51.100.99").AskForContact(_code), "asked for very often");
        Assert.Equal(20, _shop.Records.Events());
    }

    [Fact]
    public async Task Press_without_its_token_shows_and_logs_nothing()
    {
        using var content = new FormUrlEncodedContent([new("Input.FormKey", new string('a', 32))]);

        var answer = await _shop.Stranger().Client.PostAsync(new Uri($"/t/{_code}/found/contact", UriKind.Relative), content, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.DoesNotContain("7946 0958", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Events());
    }

    private static void AssertShown(WebPage page) => Assert.Contains("+44 20 7946 0958", page.Main, StringComparison.Ordinal);

    private static void AssertShopOnly(WebPage page, string words = "The shop that strings this racket knows whom to tell")
    {
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains(words, page.Main, StringComparison.Ordinal);
        Assert.Contains("+44 20 7946 0182", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("0958", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("canary", page.Text, StringComparison.Ordinal);
    }
}
