using TagPage.Records.OwnPages;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>The code that comes before what could hurt.</summary>
public sealed class CodeTests : IAsyncLifetime
{
    private const string Guarded = "/my/found/choose";

    private readonly TestShop _shop = new();
    private long _odalys;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        _odalys = _shop.Records.Family().Client;
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Guarded_page_asks_for_a_code_and_opens_with_the_one_that_was_mailed()
    {
        Assert.Equal("/my/code?next=%2Fmy%2Ffound%2Fchoose", (await _phone.Open(Guarded)).Location);

        var answer = await _phone.ProvesToBe(_shop, Guarded);

        Assert.Equal(Guarded, answer.Location);
        Assert.Contains("A finder gets", (await _phone.Open(Guarded)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Code_and_its_ten_minutes_belong_to_the_browser_it_was_typed_in()
    {
        var tablet = await _shop.OnOwnPage(_odalys);
        await _phone.ProvesToBe(_shop, Guarded);

        Assert.StartsWith("/my/code", (await tablet.Open(Guarded)).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_ten_minutes_a_new_code_is_needed()
    {
        await _phone.ProvesToBe(_shop, Guarded);
        _shop.Clock.Advance(TimeSpan.FromMinutes(10));

        Assert.StartsWith("/my/code", (await _phone.Open(Guarded)).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Code_that_is_ten_minutes_old_works_no_more()
    {
        var code = await _phone.AsksForCode(_shop);
        _shop.Clock.Advance(TimeSpan.FromMinutes(10));

        Assert.Contains("no longer works", Assert.Single((await _phone.Types(code)).Errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fifth_wrong_try_ends_the_code_and_then_the_right_one_is_refused_too()
    {
        var code = await _phone.AsksForCode(_shop);
        var wrong = code == "000000" ? "000001" : "000000";
        for (var n = 1; n < OwnPageCodeStore.MostTries; n++)
            Assert.Contains("not the code", Assert.Single((await _phone.Types(wrong)).Errors), StringComparison.Ordinal);
        Assert.Contains("no longer works", Assert.Single((await _phone.Types(wrong)).Errors), StringComparison.Ordinal);

        Assert.Contains("no longer works", Assert.Single((await _phone.Types(code)).Errors), StringComparison.Ordinal);
        Assert.StartsWith("/my/code", (await _phone.Open(Guarded)).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Code_works_once_and_a_newer_one_ends_the_one_before()
    {
        var first = await _phone.AsksForCode(_shop);
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        var second = await _phone.AsksForCode(_shop);
        Assert.NotEqual(first, second);

        Assert.NotEmpty((await _phone.Types(first)).Errors);
        Assert.Empty((await _phone.Types(second)).Errors);
        Assert.NotEmpty((await _phone.Types(second)).Errors);
    }

    [Fact]
    public async Task Fourth_code_within_an_hour_is_not_sent()
    {
        for (var n = 0; n < OwnPageCodeStore.MostAnHour + 2; n++)
            await _phone.Send(await _phone.Open("/my/code"));

        Assert.Equal(OwnPageCodeStore.MostAnHour, _shop.Records.Count("outbox", "kind = 'OwnPageCode'"));
    }

    [Fact]
    public async Task Neither_outbox_nor_log_holds_the_digits()
    {
        var code = await _phone.AsksForCode(_shop);

        Assert.DoesNotContain(code, _shop.Records.Text("SELECT group_concat(subject || body, ' ') FROM outbox"), StringComparison.Ordinal);
        Assert.DoesNotContain($"|{code}|", _shop.Records.Text("SELECT group_concat('|' || secret || '|') FROM own_page_code"), StringComparison.Ordinal);
        Assert.DoesNotContain(_shop.Log.All, line => line.Contains(code, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Client_without_a_mail_address_is_sent_to_the_shop()
    {
        _shop.Records.Change("UPDATE client SET mail = NULL");

        var page = await _phone.Open("/my/code");

        Assert.Contains("Ask the shop to do it for you", page.Main, StringComparison.Ordinal);
        Assert.Empty(page.Document.QuerySelectorAll("main form"));
    }

    [Theory]
    [InlineData("https://evil.example/")]
    [InlineData("//evil.example/my")]
    [InlineData("/my/../shop")]
    [InlineData("/shop")]
    [InlineData("/my/found?x=https://evil.example")]
    public async Task Code_leads_nowhere_but_into_the_corner(string next)
    {
        var code = await _phone.AsksForCode(_shop);
        var page = await _phone.Open("/my/code?sent=true&next=" + Uri.EscapeDataString(next));

        var answer = await _phone.Send(page, (AngleSharp.Html.Dom.IHtmlFormElement)page.Document.QuerySelector("#type")!, ("Input.Digits", code));

        Assert.Equal("/my", answer.Location);
    }

    [Fact]
    public async Task Another_language_keeps_where_the_code_leads() =>
        Assert.Equal("?next=%2Fmy%2Ffound&lang=es", (await _phone.Open("/my/code?next=/my/found&lang=en")).Document.QuerySelector("footer [lang=es]")!.GetAttribute("href"));

    [Fact]
    public async Task Address_on_file_is_hinted_at_and_not_shown()
    {
        var page = await _phone.Open("/my/code");

        Assert.Contains("o…@canary.example", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain(OnFile.CanaryMail, page.Text, StringComparison.Ordinal);
    }
}
