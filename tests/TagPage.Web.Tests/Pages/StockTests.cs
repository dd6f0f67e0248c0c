using System.Net;
using Dapper;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Runa keeps account of a string: she says how she buys it, counts it, strings a racket and is told when there is too little.</summary>
public sealed class StockTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;
    private readonly long _job;
    private readonly long _string;

    public StockTests()
    {
        _job = _shop.Records.Job(_shop.Records.Family().Racket);
        _string = _shop.Database.Read(c => c.ExecuteScalar<long>("SELECT mains_id FROM job WHERE id = @_job", new { _job }));
        _shop.Records.Change("UPDATE job SET crosses_id = mains_id, mains_supplied_by = 'Shop', crosses_supplied_by = 'Shop' WHERE id = @_job", new { _job });
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task String_is_counted_used_and_found_to_be_too_little()
    {
        var keep = await _runa.Open($"/shop/stock/keep/{_string}");
        var count = await _runa.Open((await _runa.Send(keep, ("Input.Unit", "Metre"), ("Input.RacketMetres", "11.5"), ("Input.Reorder", "30"))).Location!);
        Assert.Contains("there should be 0 m", count.Main, StringComparison.Ordinal);

        var page = await _runa.Open((await _runa.Send(count, ("Input.Amount", "20,5"))).Location!);

        Assert.Contains("20.5 m left", page.Main, StringComparison.Ordinal);
        Assert.Contains("20.5 m of Heron Spin left: time to buy.", (await _runa.Open($"/shop/jobs/{_job}")).Main, StringComparison.Ordinal);
        Assert.Contains("1 string is running out.", (await _runa.Open("/shop")).Main, StringComparison.Ordinal);
        await _runa.Send(await _runa.Open($"/shop/jobs/strung/{_job}"));
        Assert.Contains("9 m", (await _runa.Open("/shop/stock")).Document.QuerySelector("td[data-label=Left]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Purchase_sent_twice_is_put_in_once_and_rubbish_is_asked_for_again()
    {
        await _runa.Send(await _runa.Open($"/shop/stock/keep/{_string}"), ("Input.RacketMetres", "12"));
        var buy = await _runa.Open($"/shop/stock/buy/{_string}");
        foreach (var (amount, cost) in new[] { ("-1", ""), ("", ""), ("lots", ""), ("3", "much") })
            Assert.NotEmpty((await _runa.Follow(await _runa.Send(buy, ("Input.Amount", amount), ("Input.Cost", cost)))).Errors);
        Assert.Equal(0, _shop.Records.Count("stock_move"));

        await _runa.Send(buy, ("Input.Amount", "3"), ("Input.Cost", "45"));
        await _runa.Send(buy, ("Input.Amount", "3"), ("Input.Cost", "45"));

        var page = await _runa.Open($"/shop/stock/{_string}");
        Assert.Contains("3 sets left", page.Main, StringComparison.Ordinal);
        Assert.Contains("A racket takes 1 set, which cost £15.00 on average.", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task String_of_which_no_account_is_kept_has_no_page() =>
        Assert.Equal(HttpStatusCode.NotFound, (await _runa.Open($"/shop/stock/{_string}")).Status);
}
