using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Runa adds the academy's desk; Bram goes the round.</summary>
public sealed class StopTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _client, _racket, _second;

    public StopTests()
    {
        _shop.Records.Shop();
        (_client, var player, _racket, _, _) = _shop.Records.Family();
        _second = _shop.Records.Racket(player, number: 2);
    }

    public void Dispose() => _shop.Dispose();

    private async Task AddStop(string name = "Academy desk", string kind = "Desk")
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/stops/new"), ("Input.Name", name), ("Input.Kind", kind));
    }

    private async Task<long> TakeIn(long racket, string left = "1", string collect = "")
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/jobs/new?racket={racket}"), ("Input.MainsId", "1"), ("Input.MainsTension", "52"), ("Input.LeftAtId", left), ("Input.CollectAtId", collect));
        return _shop.Records.Count("job");
    }

    private void String(long job) => _shop.Records.Change("UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE id = @job", new { job });

    [Fact]
    public async Task Shop_without_a_second_place_reads_nowhere_of_places()
    {
        var owner = _shop.Owner();
        _shop.Records.Job(_racket);

        Assert.DoesNotContain("Round", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
        var form = await owner.Open($"/shop/jobs/new?racket={_second}");
        Assert.Null(form.Document.QuerySelector("[name='Input.LeftAtId']"));
        Assert.NotNull(form.Document.QuerySelector("[name='Input.ReceivedWhere']"));
        Assert.DoesNotContain("with you", (await owner.Open("/shop/jobs/2")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Helper_fetches_all_of_a_stop_and_takes_it_back_with_one_press_each()
    {
        await AddStop();
        await TakeIn(_racket);
        await TakeIn(_second);
        var bram = _shop.Helper();
        Assert.Contains("to be fetched from Academy desk", (await bram.Open("/shop")).Main, StringComparison.Ordinal);

        var answer = await Press(bram, await bram.Open("/shop/round"), "form.row[action$=Fetch]");
        var page = await bram.Open(answer.Location!);
        Assert.Contains("are fetched from Academy desk.", page.Main, StringComparison.Ordinal);
        Assert.Equal(2, _shop.Records.Count("job_stop", "fetched_at IS NOT NULL"));

        await Press(bram, page, "form.undo");
        Assert.Equal(0, _shop.Records.Count("job_stop", "fetched_at IS NOT NULL"));
        Assert.Equal(HttpStatusCode.Forbidden, (await bram.Get("/shop/stops")).StatusCode);
    }

    [Fact]
    public async Task Second_tablet_is_told_that_the_racket_was_fetched_already()
    {
        await AddStop();
        var job = await TakeIn(_racket);
        var (bram, runa) = (_shop.Helper(), _shop.Owner());
        var (one, other) = (await bram.Open("/shop/round"), await runa.Open("/shop/round"));
        await Press(bram, one, "form.act[action$=Fetch]", ("job", $"{job}"));

        var late = await Press(runa, other, "form.act[action$=Fetch]", ("job", $"{job}"));

        Assert.Contains("has moved on meanwhile", late.Main, StringComparison.Ordinal);
    }

    private static Task<WebPage> Press(Visitor visitor, WebPage page, string form, params (string, string)[] fields) =>
        visitor.Send(page, page.Document.QuerySelector<IHtmlFormElement>(form)!, fields);

    [Fact]
    public async Task Client_reads_where_to_collect_in_the_email_and_on_their_own_page()
    {
        await AddStop();
        var job = await TakeIn(_racket);
        String(job);
        var runa = _shop.Owner();
        Assert.Contains("Where to collect: Academy desk. It is brought there with our next round.", (await runa.Open($"/shop/jobs/ready/{job}")).Main, StringComparison.Ordinal);
        var phone = await _shop.OnOwnPage(_client);
        Assert.Contains("Academy desk (not there yet", (await phone.Open($"/my/rackets/{_racket}")).Main, StringComparison.Ordinal);

        await Press(runa, await runa.Open("/shop/round"), "form.act[action$=Bring]", ("job", $"{job}"));

        var told = (await runa.Open($"/shop/jobs/ready/{job}")).Main;
        Assert.Contains("Where to collect: Academy desk.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("brought there", told, StringComparison.Ordinal);
        Assert.DoesNotContain("not there yet", (await phone.Open($"/my/rackets/{_racket}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Email_in_the_owners_own_words_says_it_too()
    {
        await AddStop();
        var job = await TakeIn(_racket);
        String(job);
        _shop.Records.OwnWords("Ready", "Come and get it.");

        Assert.Contains("Come and get it.\n\nWhere to collect: Academy desk.", (await _shop.Owner().Open($"/shop/jobs/ready/{job}")).Document.QuerySelector(".lines")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rackets_that_are_collected_in_two_places_are_told_apart()
    {
        await AddStop();
        String(await TakeIn(_racket, left: "", collect: "1"));
        String(await TakeIn(_second, left: "", collect: "0"));

        var told = (await _shop.Owner().Open($"/shop/jobs/ready-all/client/{_client}")).Main;

        Assert.Contains("Where to collect: Ferrygate Racket Bench (Pim, racket 2). Where to collect: Academy desk (Pim, racket 1). It is brought there", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Client_says_at_which_stop_they_leave_it()
    {
        await AddStop();
        var phone = await _shop.OnOwnPage(_client);

        await phone.Send(await phone.Open($"/my/order/{_racket}"), ("Input.Kind", "Same"), ("Input.Where", "1"));

        var round = (await _shop.Owner().Open("/shop/round")).Main;
        Assert.Contains("Announced to be left there", round, StringComparison.Ordinal);
        Assert.Contains("Academy desk", (await phone.Open($"/my/rackets/{_racket}")).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("99")]
    [InlineData("somewhere")]
    public async Task Client_who_names_no_stop_of_the_shop_is_asked_again(string where)
    {
        await AddStop();
        var phone = await _shop.OnOwnPage(_client);
        var before = _shop.Records.Count("job");

        var answer = await phone.Send(await phone.Open($"/my/order/{_racket}"), ("Input.Kind", "Same"), ("Input.Where", where));

        Assert.Contains("send it again", answer.Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Records.Count("job"));
    }

    [Fact]
    public async Task The_same_again_forgets_a_stop_that_is_no_longer_used()
    {
        await AddStop();
        var job = await TakeIn(_racket);
        String(job);
        _shop.Records.Change("UPDATE job SET state = 'Collected', collected_on = '2026-11-25' WHERE id = @job; UPDATE stop SET is_ended = 1", new { job });
        var runa = _shop.Owner();

        var answer = await Press(runa, await runa.Open($"/shop/jobs/new?racket={_racket}"), "#same");

        Assert.Equal(HttpStatusCode.Found, answer.Status);
        Assert.Equal(1, _shop.Records.Count("job_stop"));
    }
}
