using System.Net;
using AngleSharp.Dom;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Limits;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Asking for a private link: the same for those on file and for those who are not.</summary>
public sealed class AskForLinkTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly string _tag;

    public AskForLinkTests()
    {
        _shop.Records.Shop();
        _tag = _shop.Records.Family().Tag.ToString();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Tag_page_leads_to_where_the_link_is_asked_for()
    {
        var link = (await _shop.Stranger().Open("/t/" + _tag + "?lang=es")).Document.QuerySelectorAll("main a").Single(a => a.GetAttribute("href")!.StartsWith("/my", StringComparison.Ordinal));

        Assert.Equal("/my/link?lang=es", link.GetAttribute("href"));
        Assert.Contains("Pedir un enlace", (await _shop.Stranger().Open("/my/link?lang=es")).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(OnFile.CanaryMail)]
    [InlineData("Odalys@CANARY.example")]
    public async Task Link_asked_for_by_mail_comes_to_the_address_on_file_and_opens_the_corner(string typed)
    {
        await Ask(_shop.Stranger(), typed);
        _shop.Get<LinkRequestStore>().AnswerAll();

        var mail = Assert.Single(await _shop.MailsSent());

        var link = mail.Split('\n').Single(l => l.StartsWith("https://tag.example/my/", StringComparison.Ordinal));
        Assert.True(await (await _shop.Stranger().Enters(new Uri(link).PathAndQuery)).IsOnOwnPage());
        Assert.Equal(0, _shop.Records.Count("link_request"));
    }

    [Theory]
    [InlineData(OnFile.CanaryMail, "nobody@canary.example")]
    [InlineData(OnFile.CanaryPhone, "+442079460999")]
    public async Task Known_and_unknown_get_the_same_answer_and_leave_the_same_trace_until_it_is_looked_at(string known, string unknown)
    {
        var first = await Ask(_shop.Stranger(), known);
        var (asks, mails) = (_shop.Records.Count("link_request"), _shop.Records.Count("outbox"));
        var second = await Ask(_shop.Stranger(), unknown);

        Assert.Equal(first.Text, second.Text);
        Assert.Equal((1, 0), (asks, mails));
        Assert.Equal((2, 0), (_shop.Records.Count("link_request"), _shop.Records.Count("outbox")));
    }

    [Fact]
    public async Task Unknown_address_gets_no_mail_and_is_forgotten()
    {
        await Ask(_shop.Stranger(), "nobody@canary.example");
        await Ask(_shop.Stranger(), "+442079460999");
        _shop.Get<LinkRequestStore>().AnswerAll();

        Assert.Equal(0, _shop.Records.Count("outbox"));
        Assert.Equal(0, _shop.Records.Count("client_request"));
        Assert.DoesNotContain("nobody@canary.example", _shop.Database.Dump(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Asked_for_by_phone_it_stands_once_on_the_owners_list_until_it_is_ticked_off()
    {
        await Ask(_shop.Stranger(), "020 7946 0958");
        await Ask(_shop.Stranger(), OnFile.CanaryPhone);
        _shop.Get<LinkRequestStore>().AnswerAll();
        var runa = _shop.Owner();

        var bench = await runa.Open("/shop");
        Assert.Contains("Odalys Ferran asks for a private link by phone", bench.Main, StringComparison.Ordinal);
        await runa.Send(bench, bench.Document.QuerySelectorAll<AngleSharp.Html.Dom.IHtmlFormElement>("main form").Single(f => f.Action.EndsWith("/shop/corner/requests?handler=Done", StringComparison.Ordinal)));

        Assert.DoesNotContain("private link", (await runa.Open("/shop")).Main, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("outbox"));
    }

    [Fact]
    public async Task What_is_neither_address_nor_number_is_said_and_kept()
    {
        var stranger = _shop.Stranger();
        var answer = await stranger.Send(await stranger.Open("/my/link"), ("Input.Reach", "odalys"));

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains("Enter an email address", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal("odalys", answer.Document.QuerySelector("#Input_Reach")!.GetAttribute("value"));
        Assert.Equal(0, _shop.Records.Count("link_request"));
    }

    [Fact]
    public async Task Fourth_request_for_an_address_within_the_hour_gets_the_same_answer_and_no_mail()
    {
        var answers = new List<string>();
        for (var n = 0; n < 4; n++)
            answers.Add((await Ask(_shop.Stranger($"198.51.100.{n}"), OnFile.CanaryMail)).Text);

        Assert.Single(answers.Distinct());
        Assert.Equal(LinkRequestLimits.MostOfAnAddress, _shop.Records.Count("link_request"));
    }

    [Fact]
    public async Task Source_that_asks_for_many_is_told_to_wait()
    {
        var mallory = _shop.Stranger("198.51.100.9");
        for (var n = 0; n < LinkRequestLimits.MostOfASource; n++)
            await Ask(mallory, $"guess{n}@canary.example");

        var answer = await mallory.Send(await mallory.Open("/my/link"), ("Input.Reach", OnFile.CanaryMail));

        Assert.Equal(HttpStatusCode.TooManyRequests, answer.Status);
        Assert.Equal(LinkRequestLimits.MostOfASource, _shop.Records.Count("link_request"));
    }

    private static async Task<WebPage> Ask(Visitor visitor, string reach)
    {
        var answer = await visitor.Send(await visitor.Open("/my/link"), ("Input.Reach", reach));
        Assert.Equal(HttpStatusCode.Found, answer.Status);
        return await visitor.Open(answer.Location!);
    }
}
