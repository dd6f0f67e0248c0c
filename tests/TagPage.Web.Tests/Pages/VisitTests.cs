using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Bram puts a new grip on Pim's racket.</summary>
public sealed class VisitTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _client, _racket;
    private readonly TagCode _code;

    public VisitTests()
    {
        _shop.Records.Shop();
        (_client, _, _racket, _code, _) = _shop.Records.Family();
        _shop.Records.Change("INSERT INTO extra_price (id, kind, amount_minor) VALUES (7, 'Grip', 600)");
    }

    public void Dispose() => _shop.Dispose();

    private async Task<string> Add(params (string, string)[] more)
    {
        var bram = _shop.Helper();
        var answer = await bram.Send(await bram.Open($"/shop/visits/new?racket={_racket}"), [("Input.Works", "Grip"), .. more]);
        return answer.Location!;
    }

    [Fact]
    public async Task Helper_notes_it_and_it_stands_on_the_card_with_its_price_until_it_is_paid()
    {
        var bram = _shop.Helper();
        var page = await Add(("Input.Extras", "7"), ("Input.Note", "white one"));

        Assert.Contains("new grip", (await bram.Open(page)).Main, StringComparison.Ordinal);
        var card = (await bram.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("[aria-labelledby=visits]")!.TextContent;
        Assert.Contains("£6.00", card, StringComparison.Ordinal);
        Assert.Contains("not paid", card, StringComparison.Ordinal);

        var paid = await bram.Send(await bram.Open("/shop/jobs/paid/2"), ("Input.How", "Cash"));
        Assert.Contains("is paid", (await bram.Open((await bram.Open(paid.Location!)).Location!)).Main, StringComparison.Ordinal);
        Assert.DoesNotContain("not paid", (await bram.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("[aria-labelledby=visits]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Done", (await bram.Open("/shop/money/receipt/2")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Price_that_is_typed_is_no_restring_on_the_receipt()
    {
        await Add(("Input.Price", "12.34"));

        var receipt = (await _shop.Owner().Open("/shop/money/receipt/2")).Main;

        Assert.Contains("visit without stringing", receipt, StringComparison.Ordinal);
        Assert.DoesNotContain("restring, all in one", receipt, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Second_visit_of_a_day_is_asked_about_once_and_the_same_form_sent_twice_is_one()
    {
        var bram = _shop.Helper();
        var form = await bram.Open($"/shop/visits/new?racket={_racket}");
        await bram.Send(form, ("Input.Works", "Grip"));
        await bram.Send(form, ("Input.Works", "Grip"));

        var asked = await bram.Send(await bram.Open($"/shop/visits/new?racket={_racket}"), ("Input.Works", "Grip"));

        Assert.Null(asked.Location);
        Assert.Contains("is a visit of this racket on", asked.Main, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("job", "done_on IS NOT NULL"));
    }

    [Fact]
    public async Task Year_that_is_a_slip_is_refused()
    {
        var bram = _shop.Helper();

        var answer = await bram.Send(await bram.Open($"/shop/visits/new?racket={_racket}"), ("Input.Works", "Grip"), ("Input.DoneOn", "0001-01-01"));

        Assert.Contains("Check the year.", answer.Main, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("job", "done_on IS NOT NULL"));
    }

    [Fact]
    public async Task Ticket_number_leads_to_the_visit()
    {
        var page = await Add();

        var found = await _shop.Owner().Open("/shop/jobs/2");

        Assert.Equal((HttpStatusCode.Found, page), (found.Status, found.Location));
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get("/shop/jobs/3")).StatusCode);
    }

    [Theory]
    [InlineData("/shop/jobs/edit/2")]
    [InlineData("/shop/jobs/strung/2")]
    [InlineData("/shop/jobs/move/2")]
    [InlineData("/shop/jobs/delete/2")]
    [InlineData("/shop/jobs/start/2")]
    [InlineData("/shop/prepaid/use/2")]
    [InlineData("/shop/readings/new/2")]
    public async Task No_page_of_a_stringing_shows_it(string path)
    {
        await Add();

        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get(path)).StatusCode);
    }

    [Fact]
    public async Task Stranger_reads_day_and_kind_in_their_language_and_nothing_of_note_or_price()
    {
        await Add(("Input.Extras", "7"), ("Input.Note", "canary: white one"));
        var stranger = _shop.Stranger();

        var page = await stranger.Open($"/t/{_code}");
        Assert.Contains("25 Nov 2026: new grip", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("canary", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("6.00", page.Text, StringComparison.Ordinal);
        Assert.Contains("neues Griffband", (await stranger.Open($"/t/{_code}?lang=de")).Main, StringComparison.Ordinal);
        Assert.Contains("new grip", (await (await _shop.OnOwnPage(_client)).Open($"/my/rackets/{_racket}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_without_visits_reads_nowhere_of_them()
    {
        Assert.DoesNotContain("Other work", (await _shop.Stranger().Open($"/t/{_code}")).Main, StringComparison.Ordinal);
        Assert.Null((await _shop.Owner().Open($"/shop/rackets/{_racket}")).Document.QuerySelector("[aria-labelledby=visits]"));
    }

    [Fact]
    public async Task Form_with_nothing_ticked_says_what_is_missing_and_keeps_what_was_typed()
    {
        var bram = _shop.Helper();

        var answer = await bram.Send(await bram.Open($"/shop/visits/new?racket={_racket}"), ("Input.Note", "kept note"));

        Assert.Contains("Tick what is to be done, or was.", answer.Errors);
        Assert.Contains("kept note", answer.Text, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("job"));
    }

    [Fact]
    public async Task One_that_waits_goes_from_the_bench_to_paid_and_is_taken_back_with_one_press()
    {
        var bram = _shop.Helper();
        await Add(("Input.Waits", "true"), ("Input.PromisedFor", "2026-11-27"), ("Input.Extras", "7"));

        var bench = await bram.Open("/shop");
        var row = bench.Document.QuerySelector(".bench li.job")!.TextContent;
        Assert.Contains("New grip", row, StringComparison.Ordinal);
        Assert.Contains("promised in 2 days, 27 Nov 2026", row, StringComparison.Ordinal);
        Assert.Contains("At the shop, waiting its turn", (await (await _shop.OnOwnPage(_client)).Open($"/my/rackets/{_racket}")).Main, StringComparison.Ordinal);

        var done = await bram.Open((await bram.Send(bench, bench.Document.QuerySelector<IHtmlFormElement>("form[action='/shop/visits/done/2']")!)).Location!);
        Assert.Contains("Ticket 1002 is done and ready to collect.", done.Main, StringComparison.Ordinal);
        await bram.Send(done, done.Document.QuerySelector<IHtmlFormElement>("form.undo")!);
        Assert.Equal(1, _shop.Records.Count("job", "state = 'Waiting' AND done_on IS NULL"));

        await bram.Send(await bram.Open("/shop/visits/done/2"));
        Assert.Contains("done today", (await bram.Open("/shop")).Document.QuerySelector("[aria-labelledby=ready] li.job")!.TextContent, StringComparison.Ordinal);
        await bram.Send(await bram.Open("/shop/jobs/collect/2"), ("Input.How", "Cash"));
        Assert.Equal(1, _shop.Records.Count("job", "id = 2 AND state = 'Collected' AND paid_on = '2026-11-25'"));
    }

    [Fact]
    public async Task Email_that_it_is_ready_speaks_of_no_strings_in_any_language()
    {
        _shop.Records.OwnWords("Ready", "Freshly strung: {racket}");
        await Add(("Input.Waits", "true"));
        var bram = _shop.Helper();
        await bram.Send(await bram.Open("/shop/visits/done/2"));
        foreach (var (language, said) in new[] { ("en", "the work is done"), ("de", "Die Arbeit ist erledigt"), ("ja", "作業が完了しました") })
        {
            _shop.Records.Change("UPDATE client SET language = @language", new { language });
            var ready = (await bram.Open("/shop/jobs/ready/2")).Main;
            Assert.Contains(said, ready, StringComparison.Ordinal);
            Assert.DoesNotContain("strung", ready, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public async Task Label_for_the_bag_says_what_is_to_be_done()
    {
        await Add(("Input.Waits", "true"), ("Input.Works", "Grip"), ("Input.PromisedFor", "2026-11-27"));

        var label = (await _shop.Helper().Open($"/shop/labels/racket/{_racket}?job=2")).Document.QuerySelector("[aria-labelledby=look]")!.TextContent;

        Assert.Contains("New grip", label, StringComparison.Ordinal);
        Assert.Contains("27 Nov 2026", label, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_that_waits_for_a_visit_is_left_at_a_stop_and_looked_at_as_it_comes_in()
    {
        _shop.Records.Change("INSERT INTO stop (id, name, kind, position) VALUES (5, 'Lido desk', 'Desk', 1)");
        var page = await Add(("Input.Waits", "true"), ("Input.LeftAtId", "5"));
        var bram = _shop.Helper();

        Assert.Contains("to be fetched from Lido desk", (await bram.Open(page)).Main, StringComparison.Ordinal);
        var round = await bram.Open("/shop/round");
        var fetched = await bram.Send(round, round.Document.QuerySelector<IHtmlFormElement>("form[action='/shop/round?handler=Fetch']")!, ("job", "2"));
        Assert.Contains("Ticket 1002 is fetched from Lido desk.", (await bram.Open(fetched.Location!)).Main, StringComparison.Ordinal);

        await bram.Send(await bram.Open("/shop/jobs/condition/2"), ("Input.GripWords", "torn at the end"));
        Assert.Contains("torn at the end", (await bram.Open(page)).Main, StringComparison.Ordinal);
        Assert.Equal("5", (await bram.Open(page.Replace("visits/", "visits/edit/", StringComparison.Ordinal))).Document.QuerySelector<IHtmlSelectElement>("[name='Input.LeftAtId']")!.Value);
    }

    [Fact]
    public async Task Promise_for_a_closed_day_and_a_second_one_that_waits_are_asked_about()
    {
        await Add(("Input.Waits", "true"));
        _shop.Records.Change("INSERT INTO closed_days (from_on, to_on, note) VALUES ('2026-11-27', '2026-11-27', 'stocktaking')");
        var bram = _shop.Helper();

        var asked = await bram.Send(await bram.Open($"/shop/visits/new?racket={_racket}"), ("Input.Works", "Grip"), ("Input.Waits", "true"), ("Input.PromisedFor", "2026-11-27"));

        Assert.Contains("waits on the bench already", asked.Main, StringComparison.Ordinal);
        Assert.Contains("stocktaking", asked.Main, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("job", "mains_id IS NULL"));
    }

    [Fact]
    public async Task Owner_deletes_one_that_was_a_mistake()
    {
        var page = await Add();
        var runa = _shop.Owner();
        Assert.Equal(HttpStatusCode.Forbidden, (await _shop.Helper().Get(page.Replace("visits/", "visits/delete/", StringComparison.Ordinal))).StatusCode);

        await runa.Send(await runa.Open(page.Replace("visits/", "visits/delete/", StringComparison.Ordinal)));

        Assert.Equal(1, _shop.Records.Count("job"));
    }
}
