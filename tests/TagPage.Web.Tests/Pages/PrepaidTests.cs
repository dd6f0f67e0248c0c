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

    private async Task<WebPage> Sell(params (string, string)[] fields)
    {
        var bram = _shop.Helper();
        return await bram.Send(await bram.Open($"/shop/prepaid/sell/client/{_client}"), [("Input.Restrings", "5"), ("Input.Amount", "80"), ("Input.How", "Card"), .. fields]);
    }

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
        Assert.Equal(0, _shop.Records.Count("payment"));
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Helper().Get($"/shop/prepaid/sell/nobody/{_client}")).StatusCode);
    }

    [Fact]
    public async Task Shop_that_sells_none_reads_nowhere_of_them_at_hand_out()
    {
        Assert.DoesNotContain("repaid", (await _shop.Helper().Open($"/shop/jobs/collect/{_job}")).Main, StringComparison.Ordinal);
    }
}
