using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Bram lends the shop's demo 1 to Odalys.</summary>
public sealed class LoanTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _client, _racket;

    public LoanTests()
    {
        _shop.Records.Shop();
        (_client, _, _racket, _, _) = _shop.Records.Family();
        _shop.Records.Change("INSERT INTO loan_racket (name) VALUES ('Demo 1')");
    }

    public void Dispose() => _shop.Dispose();

    private async Task<WebPage> Lend(string due = "2026-12-02")
    {
        var bram = _shop.Helper();
        return await bram.Send(await bram.Open($"/shop/loans/lend?client={_client}"), ("Input.RacketId", "1"), ("Input.DueOn", due));
    }

    [Fact]
    public async Task Card_and_list_say_who_has_it_and_one_press_takes_it_back()
    {
        await Lend();
        var bram = _shop.Helper();
        Assert.Contains("due back on 2 Dec 2026", (await bram.Open($"/shop/clients/{_client}")).Main, StringComparison.Ordinal);

        var list = await bram.Open("/shop/loans");
        var back = await bram.Send(list, list.Document.QuerySelector<IHtmlFormElement>("form[action='/shop/loans/back/1']")!);

        var again = await bram.Open(back.Location!);
        Assert.Contains("Demo 1 is back from Odalys Ferran.", again.Main, StringComparison.Ordinal);
        await bram.Send(again, again.Document.QuerySelector<IHtmlFormElement>("form.undo")!);
        Assert.Equal(1, _shop.Records.Count("loan", "back_on IS NULL"));
    }

    [Fact]
    public async Task Overdue_loan_stands_on_the_bench()
    {
        await Lend(due: "2026-11-25");
        Assert.DoesNotContain("overdue", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
        _shop.Records.Change("UPDATE loan SET lent_on = '2026-11-10', due_on = '2026-11-24'");

        Assert.Contains("Odalys Ferran has Demo 1, ▲ overdue since 24 Nov 2026", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hand_out_reminds_of_what_the_client_still_has()
    {
        await Lend();
        var job = _shop.Records.Job(_racket);
        _shop.Records.Change("UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE id = @job", new { job });

        Assert.Contains("Odalys Ferran has Demo 1", (await _shop.Helper().Open($"/shop/jobs/collect/{job}")).Main, StringComparison.Ordinal);
        Assert.Contains("Odalys Ferran has Demo 1", (await _shop.Helper().Open($"/shop/jobs/pick-up/client/{_client}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Second_tablet_is_told_who_has_it()
    {
        var runa = _shop.Owner();
        var form = await runa.Open($"/shop/loans/lend?client={_client}");
        await Lend();

        var late = await runa.Send(form, ("Input.RacketId", "1"));

        Assert.Contains("Odalys Ferran has Demo 1 already", late.Main, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("loan"));
    }

    [Fact]
    public async Task Helper_lends_and_does_not_change_the_list()
    {
        var bram = _shop.Helper();

        Assert.Equal(HttpStatusCode.Forbidden, (await bram.Get("/shop/loans/new")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await bram.Get("/shop/loans/edit/1")).StatusCode);
        Assert.DoesNotContain("Add a racket of yours", (await bram.Open("/shop/loans")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Shop_without_rackets_to_lend_reads_nowhere_of_loans()
    {
        _shop.Records.Change("DELETE FROM loan_racket");

        Assert.DoesNotContain("Lend", (await _shop.Owner().Open($"/shop/clients/{_client}")).Main, StringComparison.Ordinal);
    }
}
