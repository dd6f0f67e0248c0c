using System.Net;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Limits;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>What one client, or somebody with that client's phone, can make the owner read in a day.</summary>
public sealed class DailyLimitTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _racket;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        var family = _shop.Records.Family();
        _racket = family.Racket;
        _phone = await _shop.OnOwnPage(family.Client);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Who_pays_is_passed_on_three_times_a_day_and_then_left_to_a_call()
    {
        for (var n = 1; n <= 3; n++)
            Assert.Contains("will see to it", await SayWhoPays("Word " + n), StringComparison.Ordinal);

        Assert.Contains("3 times today", await SayWhoPays("Word 4"), StringComparison.Ordinal);
        Assert.Equal(3, _shop.Records.Count("client_request"));

        _shop.Clock.Advance(TimeSpan.FromHours(25));
        Assert.Contains("will see to it", await SayWhoPays("Word 5"), StringComparison.Ordinal);
        Assert.Equal(4, _shop.Records.Count("client_request"));
    }

    [Fact]
    public async Task Racket_can_be_asked_for_and_taken_back_three_times_a_day()
    {
        for (var n = 0; n < 3; n++)
            await AskAndCancel();
        var (jobs, mails) = (_shop.Records.Count("job"), _shop.Records.Count("outbox"));

        var answer = await _phone.Send(await _phone.Open($"/my/order/{_racket}"), ("Input.Where", "kept place"));

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains("3 times today", answer.Main, StringComparison.Ordinal);
        Assert.Contains("kept place", answer.Text, StringComparison.Ordinal);
        Assert.Equal((jobs, mails), (_shop.Records.Count("job"), _shop.Records.Count("outbox")));

        _shop.Clock.Advance(TimeSpan.FromDays(1));
        await AskAndCancel();
        Assert.Equal(jobs + 1, _shop.Records.Count("job"));
    }

    [Theory]
    [InlineData(OnFile.CanaryMail)]
    [InlineData("nobody@canary.example")]
    public async Task Six_links_a_day_go_to_an_address_and_what_is_answered_stays_alike(string address)
    {
        var answers = new HashSet<string>();
        var asked = 0L;
        for (var n = 0; n < 30; n++)
        {
            answers.Add((await Ask(_shop.Stranger($"198.51.100.{n}"), address)).Text);
            asked += _shop.Records.Count("link_request");
            _shop.Get<LinkRequestStore>().AnswerAll();
            _shop.Clock.Advance(TimeSpan.FromMinutes(25));
        }

        Assert.Contains("6 a day", Assert.Single(answers), StringComparison.Ordinal);
        Assert.Equal(6, asked);
        Assert.Equal(address == OnFile.CanaryMail ? 6 : 0, _shop.Records.Count("outbox"));
    }

    [Fact]
    public async Task Source_that_asks_for_many_links_is_told_so_in_its_language_with_what_was_typed_kept()
    {
        var club = _shop.Stranger("198.51.100.9");
        var form = await club.Open("/my/link?lang=es");
        for (var n = 0; n < LinkRequestLimits.MostOfASource; n++)
            Assert.Equal(HttpStatusCode.Found, (await club.Send(form, ("Input.Reach", $"guess{n}@canary.example"))).Status);

        var answer = await club.Send(form, ("Input.Reach", OnFile.CanaryMail));

        Assert.Equal(HttpStatusCode.TooManyRequests, answer.Status);
        Assert.NotNull(answer.Response.Headers.RetryAfter);
        Assert.Contains("Desde su red", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Contains(OnFile.CanaryMail, answer.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("+44 20 7946 0182", answer.Main, StringComparison.Ordinal);
        Assert.Equal(LinkRequestLimits.MostOfASource, _shop.Records.Count("link_request"));
    }

    private async Task<string> SayWhoPays(string words)
    {
        var details = await _phone.Open("/my/details");
        var answer = await _phone.Send(details, details.Form("/my/details?handler=Payer"), ("Input.Words", words));
        return answer.Location is { } next ? (await _phone.Open(next)).Text : answer.Text;
    }

    private async Task AskAndCancel()
    {
        await _phone.Send(await _phone.Open($"/my/order/{_racket}"));
        var page = await _phone.Open($"/my/rackets/{_racket}");
        await _phone.Send(page, page.Form("?handler=Cancel"));
    }

    private static async Task<WebPage> Ask(Visitor visitor, string reach)
    {
        var answer = await visitor.Send(await visitor.Open("/my/link"), ("Input.Reach", reach));
        return await visitor.Open(answer.Location!);
    }
}
