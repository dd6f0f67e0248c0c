using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Odalys buys five restrings in advance; a ticket of hers is ready, with 18.00 for labour and 9.00 for strings.</summary>
public sealed class PrepaidTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _client, _job;

    public PrepaidTests()
    {
        _shop.Records.Shop();
        (_client, _, var racket, _, _) = _shop.Records.Family();
        _job = _shop.Records.Job(racket);
        _shop.Records.Change("""
            UPDATE job SET state = 'Strung', strung_on = '2026-11-25', price_minor = 2700 WHERE id = @_job;
            DELETE FROM charge WHERE job_id = @_job;
            INSERT INTO charge (job_id, kind, amount_minor) VALUES (@_job, 'Labour', 1800), (@_job, 'Strings', 900);
            """, new { _job });
    }

    public void Dispose() => _shop.Dispose();

    private Task<WebPage> Sell(params (string, string)[] fields) => Sell(_shop.Helper(), fields);

    private async Task<WebPage> Sell(Visitor bram, params (string, string)[] fields) =>
        await bram.Send(await bram.Open($"/shop/prepaid/sell/client/{_client}"), [("Input.Restrings", "5"), ("Input.Amount", "80"), ("Input.How", "Card"), .. fields]);

    private static Task<WebPage> Press(Visitor visitor, WebPage page, string form) => visitor.Send(page, page.Document.QuerySelector<IHtmlFormElement>(form)!);

    [Fact]
    public async Task Hand_out_takes_one_off_the_price_and_taking_it_back_gives_it_back()
    {
        await Sell();
        var bram = _shop.Helper();
        Assert.Contains("5 left of 5", (await bram.Open($"/shop/clients/{_client}")).Document.QuerySelector("[aria-labelledby=prepaid]")!.TextContent, StringComparison.Ordinal);

        var used = await bram.Open((await Press(bram, await bram.Open($"/shop/jobs/collect/{_job}"), "form[action^='/shop/prepaid/use']")).Location!);
        Assert.Contains("4 left", used.Main, StringComparison.Ordinal);
        Assert.Equal("£9.00", used.Document.QuerySelector("form.card .big")!.TextContent);

        await bram.Send(used, used.Document.QuerySelector<IHtmlFormElement>("form.card")!, ("Input.How", "Cash"));
        Assert.Equal(1, _shop.Records.Count("job", $"id = {_job} AND state = 'Collected' AND paid_on IS NOT NULL AND price_minor = 900"));

        await bram.Send(await bram.Open($"/shop/jobs/back/{_job}"));
        Assert.Equal(0, _shop.Records.Count("prepaid_use", "given_back_at IS NULL"));
    }

    [Fact]
    public async Task Sale_has_a_receipt_and_a_bill_in_the_clients_language()
    {
        _shop.Records.Change("UPDATE client SET language = 'de'");
        var bram = _shop.Helper();
        var sold = await bram.Open((await Sell(bram)).Location!);
        var receipt = await bram.Open(sold.Document.QuerySelector(".said a")!.GetAttribute("href")!);
        foreach (var words in new[] { "Beleg zu im Voraus bezahlten Bespannungen", "Im Voraus bezahlte Bespannungen: 5, jede umfasst die Arbeit", "80,00 £", "Bezahlt mit Karte, 25. Nov. 2026" })
            Assert.Contains(words, receipt.Main.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Equal("application/pdf", (await bram.Get(receipt.Document.QuerySelector("main a.primary")!.GetAttribute("href")!)).Content.Headers.ContentType!.MediaType);

        var runa = _shop.Owner();
        var account = await runa.Open($"/shop/money/client/{_client}");
        var bill = await runa.Open((await runa.Post(account, account.Form($"/shop/money/client/{_client}?handler=Sale"))).Location!);

        foreach (var words in new[] { "Rechnung 2026-0001", "Gekauft am", "Im Voraus bezahlte Bespannungen: 5", "Bereits bezahlt", "nothing is left to pay" })
            Assert.Contains(words, bill.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("Write its bill", (await runa.Open($"/shop/money/client/{_client}")).Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await bram.Get("/shop/prepaid/receipt/99")).StatusCode);
    }

    [Fact]
    public async Task Question_on_taking_a_hand_out_back_says_that_a_prepaid_restring_goes_back_and_so_does_the_one_press()
    {
        await Sell();
        var bram = _shop.Helper();
        var used = await bram.Open((await Press(bram, await bram.Open($"/shop/jobs/collect/{_job}"), "form[action^='/shop/prepaid/use']")).Location!);
        Assert.DoesNotContain("prepaid", (await bram.Open($"/shop/jobs/back/{_job}")).Main, StringComparison.Ordinal);
        await bram.Send(used, used.Document.QuerySelector<IHtmlFormElement>("form.card")!, ("Input.How", "Cash"));

        Assert.Contains("The prepaid restring that was used for it goes back: 5 left then, and £18.00 are on the ticket’s price again.", (await bram.Open($"/shop/jobs/back/{_job}")).Main, StringComparison.Ordinal);

        var question = await bram.Open($"/shop/jobs/undo?from=Collected&job={_job}");
        Assert.Contains("The prepaid restring that was used goes back", question.Main, StringComparison.Ordinal);
        var done = await bram.Open((await bram.Send(question)).Location!);
        Assert.Contains("The prepaid restring is given back.", done.Document.QuerySelector(".said")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("prepaid_use", "given_back_at IS NULL"));
    }

    [Fact]
    public async Task Whoever_deletes_a_clients_data_reads_first_what_is_lost()
    {
        _shop.Records.Change("UPDATE job SET paid_on = strung_on, state = 'Collected', collected_on = strung_on");
        var (runa, phone) = (_shop.Owner(), await _shop.OnOwnPage(_client));
        await phone.ProvesToBe(_shop);
        Assert.DoesNotContain("repaid", (await runa.Open($"/shop/corner/{_client}")).Main + (await phone.Open("/my/forget")).Main, StringComparison.Ordinal);

        await Sell();

        Assert.Contains("5 prepaid restrings are not used yet and would be lost.", (await runa.Open($"/shop/corner/{_client}")).Main, StringComparison.Ordinal);
        Assert.Contains("Prepaid restrings left: 5. They are lost with your data.", (await phone.Open("/my/forget")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Question_on_taking_the_payment_of_a_sale_back_says_what_becomes_of_the_restrings()
    {
        await Sell();
        var runa = _shop.Owner();
        var question = await runa.Open($"/shop/money/back/{_shop.Records.Text("SELECT payment_id FROM prepaid")}");

        Assert.Contains("It paid for 5 prepaid restrings, which can no longer be used then.", question.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("owed", question.Main, StringComparison.Ordinal);

        await runa.Send(question);
        Assert.DoesNotContain("5 left", (await runa.Open($"/shop/clients/{_client}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Question_on_taking_back_what_is_all_in_credit_names_no_ticket()
    {
        _shop.Records.Change("INSERT INTO payment (client_id, paid_on, method, amount_minor, made_at, made_by) SELECT @_client, '2026-11-20', 'Cash', 500, '2026-11-20T10:00:00.000Z', 'Shop'", new { _client });

        var question = await _shop.Owner().Open($"/shop/money/back/{_shop.Records.Text("SELECT MAX(id) FROM payment")}");

        Assert.Contains("No ticket on file was paid with it.", question.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("owed", question.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Client_reads_what_is_left_in_their_language()
    {
        var phone = await _shop.OnOwnPage(_client);
        Assert.DoesNotContain("Prepaid", (await phone.Open("/my")).Main, StringComparison.Ordinal);

        await Sell();

        Assert.Contains("Prepaid restrings left: 5", (await phone.Open("/my")).Main, StringComparison.Ordinal);
        Assert.Contains("Im Voraus bezahlte Bespannungen übrig: 5", (await phone.Open("/my?lang=de")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_typed_right_is_said_beside_its_field()
    {
        var answer = await Sell(("Input.Restrings", "0"));

        Assert.Contains("Enter how many restrings: 1 to 100.", answer.Errors);
        Assert.Contains("Check the year.", (await Sell(("Input.BoughtOn", "1926-11-25"))).Errors);
        Assert.Equal(0, _shop.Records.Count("payment"));
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Helper().Get($"/shop/prepaid/sell/nobody/{_client}")).StatusCode);
    }

    [Fact]
    public async Task Shop_that_sells_none_reads_nowhere_of_them_at_hand_out()
    {
        Assert.DoesNotContain("repaid", (await _shop.Helper().Open($"/shop/jobs/collect/{_job}")).Main, StringComparison.Ordinal);
    }
}
