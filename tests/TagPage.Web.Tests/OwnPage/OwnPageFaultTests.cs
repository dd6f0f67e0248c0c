using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>What Odalys typed and nobody can read: each page says it beside the field, and says what it did not do.</summary>
public sealed class OwnPageFaultTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _racket;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _, _racket, _, _) = _shop.Records.Family();
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Theory]
    [InlineData("times=-3&hours=1", "times", "Enter how many times a week: 0 or more, at most 21.")]
    [InlineData("times=22&hours=1", "times", "Enter how many times a week: 0 or more, at most 21.")]
    [InlineData("times=often&hours=1", "times", "Enter how many times a week: 0 or more, at most 21.")]
    [InlineData("times=2&hours=9", "hours", "Enter the hours played: 0 or more, at most 8.")]
    [InlineData("times=2&hours=", "hours", "Enter the hours played: 0 or more, at most 8.")]
    public async Task What_if_says_beside_its_field_what_it_cannot_work_with(string asked, string field, string said)
    {
        var page = await _phone.Open($"/my/what-if/{_racket}?{asked}");

        Assert.Equal([said], page.Errors);
        Assert.Equal("No date to show yet", page.Document.QuerySelector(".errors h2")?.TextContent);
        Assert.Null(page.Document.QuerySelector("main .by"));
        var input = page.Document.QuerySelector($"#{page.Document.QuerySelector(".errors a")!.GetAttribute("href")![1..]}")!;
        Assert.Equal(field, input.GetAttribute("name"), ignoreCase: true);
        Assert.Equal("true", input.GetAttribute("aria-invalid"));
        Assert.Equal(System.Web.HttpUtility.ParseQueryString(asked)[field], input.GetAttribute("value"));
    }

    [Fact]
    public async Task Nothing_written_about_who_pays_is_said_beside_the_field_and_the_shop_hears_nothing()
    {
        var page = await _phone.Open("/my/details");

        var answer = await _phone.Send(page, page.Form("/my/details?handler=Payer"), ("Input.Words", "  "));

        Assert.Equal(["Write who will pay before you send it."], answer.Errors);
        Assert.Equal("true", answer.Document.QuerySelector("[name='Input.Words']")!.GetAttribute("aria-invalid"));
        Assert.Equal(0, _shop.Records.Count("client_request"));
    }

    [Theory]
    [InlineData("/my/order/{racket}", "Input.Kind", "", "Not sent yet")]
    [InlineData("/my/lost/{racket}", "Input.Since", "", "Not marked as lost yet")]
    [InlineData("/my/hours/{racket}", "Input.Hours", "", "Not logged yet")]
    [InlineData("/my/reading/{racket}", "Input.Value", "", "Not logged yet")]
    [InlineData("/my/link", "Input.Reach", "nobody", "No link requested yet")]
    [InlineData("/my/code?sent=true", "Input.Digits", "0", "Not confirmed yet")]
    [InlineData("/my/feel/1", "Input.Bed", "", "Not saved yet")]
    public async Task Heading_of_the_fault_names_what_the_page_does(string address, string field, string typed, string heading)
    {
        var page = await _phone.Open(address.Replace("{racket}", $"{_racket}", StringComparison.Ordinal));
        var form = page.Document.QuerySelectorAll<IHtmlFormElement>("main form[method=post]").Last();

        var answer = await _phone.Send(page, form, (field, typed));

        Assert.Equal(heading, answer.Document.QuerySelector(".errors h2")?.TextContent);
        Assert.Single(answer.Errors);
    }

    [Theory]
    [InlineData("/my/export", "Not downloaded yet")]
    [InlineData("/my/forget", "Nothing is being deleted yet")]
    [InlineData("/my/pass-on/{racket}", "Not passed on yet")]
    public async Task Heading_says_so_where_only_the_code_is_missing_too(string address, string heading)
    {
        await _phone.ProvesToBe(_shop);
        var page = await _phone.Open(address.Replace("{racket}", $"{_racket}", StringComparison.Ordinal));
        _shop.Clock.Advance(TimeSpan.FromMinutes(11));

        var answer = await _phone.Send(page, page.Document.QuerySelectorAll<IHtmlFormElement>("main form[method=post]").Last());

        Assert.Equal(heading, answer.Document.QuerySelector(".errors h2")?.TextContent);
    }

    [Fact]
    public async Task Cancelling_too_late_says_that_it_was_not_cancelled()
    {
        await _phone.Send(await _phone.Open($"/my/order/{_racket}"));
        var page = await _phone.Open($"/my/rackets/{_racket}");
        _shop.Records.Change("UPDATE job SET state = 'OnMachine' WHERE state = 'Waiting'");

        var answer = await _phone.Send(page, page.Form("?handler=Cancel"));

        Assert.Equal("Not cancelled", answer.Document.QuerySelector(".errors h2")?.TextContent);
    }
}
