using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class FiguresTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;
    private readonly long _odalys, _job;

    public FiguresTests()
    {
        _shop.Records.Shop();
        (_odalys, _, _, _, _job) = _shop.Records.Family();
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Year_is_drawn_and_stands_in_a_table_with_the_same_figures()
    {
        await _runa.Send(await _runa.Open($"/shop/jobs/paid/{_job}"), ("Input.How", "Card"));

        var page = await _runa.Open("/shop/money/figures");

        foreach (var words in new[] { "2026 in figures", "November", "£24.50", "Heron Spin 1.25" })
            Assert.Contains(words, page.Main, StringComparison.Ordinal);
        Assert.Equal(2, page.Document.QuerySelectorAll("main svg.bars[role=img][aria-label]").Length);
        Assert.DoesNotContain("November", (await _runa.Open("/shop/money/figures?year=2025")).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-5")]
    [InlineData("9999")]
    [InlineData("99999999999")]
    public async Task Year_that_no_calendar_has_breaks_nothing(string year) =>
        Assert.Equal(HttpStatusCode.OK, (await _runa.Get($"/shop/money/figures?year={year}")).StatusCode);

    [Fact]
    public async Task Accountants_file_runs_no_formula_and_keeps_amounts_as_numbers()
    {
        _shop.Records.Change("UPDATE client SET name = '=HYPERLINK(\"http://evil.example\")'");
        await _runa.Send(await _runa.Open($"/shop/jobs/paid/{_job}"), ("Input.How", "Cash"));
        await _runa.Send(await _runa.Open("/shop/money/back/1"));

        var lines = (await Text("Payments")).Split("\r\n");

        Assert.Equal("payment,day,from,how,amount,currency,takes_back,tickets,note", lines[0].TrimStart('\uFEFF'));
        Assert.Equal("1,2026-11-25,\"'=HYPERLINK(\"\"http://evil.example\"\")\",cash,24.50,GBP,,1001,", lines[1]);
        Assert.Equal("2,2026-11-25,\"'=HYPERLINK(\"\"http://evil.example\"\")\",cash,-24.50,GBP,1,1001,", lines[2]);
        Assert.Equal("2026-11-01,1001,0,24.50,0.00,24.50,GBP", (await Text("Charges")).Split("\r\n")[1]);
    }

    private async Task<string> Text(string handler) =>
        await (await _runa.Get($"/shop/money/figures?handler={handler}&year=2026")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

    [Fact]
    public async Task Client_reads_what_is_to_pay_and_gets_the_square_for_euros_alone()
    {
        var odalys = await _shop.OnOwnPage(_odalys);
        var page = await odalys.Open("/my");
        Assert.Contains("To pay: £24.50", page.Text, StringComparison.Ordinal);
        Assert.Null(page.Document.QuerySelector("main .pay"));

        _shop.Records.Change("UPDATE shop SET currency = 'EUR'; INSERT INTO money_setting (id, iban) VALUES (1, 'DE89370400440532013000')");
        Assert.Contains("To pay by transfer: €24.50 to", (await odalys.Open("/my")).Text, StringComparison.Ordinal);
        Assert.Contains("€24.50", (await odalys.Open("/my")).Document.QuerySelector("main .pay")!.GetAttribute("aria-label"), StringComparison.Ordinal);

        _shop.Records.Change("INSERT INTO payer (id, name) VALUES (1, 'Hall Academy'); UPDATE client SET payer_id = 1");
        Assert.DoesNotContain("24.50", (await odalys.Open("/my")).Text, StringComparison.Ordinal);
    }
}
