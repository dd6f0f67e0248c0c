using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>What is paid at the desk, what is owed, and what the shop's day sheet and bills make of it.</summary>
public sealed class DeskMoneyTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task What_is_not_paid_at_hand_out_stays_in_sight_and_can_be_paid_later()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn("Tove Alling");
        var tablet = await fair.Tablet();
        await tablet.Send(await tablet.Open($"{fair.Home}/in/player/{fair.Board.Of(1)!.PlayerId}"));
        foreach (var number in (int[])[1, 2])
        {
            Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, number, fair.Bram));
            Fairground.Done(_shop.Get<DeskMoveStore>().Strung(Who.Shop, fair.Id, number));
        }
        await Fairground.Press(tablet, await tablet.Open(fair.Home + "/entry/1"), "Handed out on account, not paid yet");

        Assert.Contains("number 1", (await tablet.Open(fair.Home + "/entry/2")).Document.QuerySelector("[aria-labelledby=out]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("/entry/1", (await tablet.Open(fair.Home)).Document.QuerySelector("[aria-labelledby=owed]")!.InnerHtml, StringComparison.Ordinal);
        await Fairground.Press(tablet, await tablet.Open(fair.Home + "/entry/1"), "Paid by card");

        Assert.False(fair.Board.Of(1)!.IsUnpaid);
        Assert.Equal(1, _shop.Records.Count("payment", "method = 'Card' AND amount_minor = 1200"));
        Assert.Null((await tablet.Open(fair.Home)).Document.QuerySelector("[aria-labelledby=owed]"));
    }

    [Fact]
    public async Task Day_sheet_as_csv_runs_no_formula_and_bills_are_by_player_and_team()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn("=cmd()");
        fair.TakeIn("Tove Alling");
        fair.TakeIn("Tove Alling");
        foreach (var number in (int[])[1, 2])
        {
            Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, number, fair.Bram));
            Fairground.Done(_shop.Get<DeskMoveStore>().Strung(Who.Shop, fair.Id, number));
        }
        var runa = _shop.Owner();

        var csv = await (await runa.Get($"/shop/events/day/{fair.Id}?handler=csv")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("1,'=cmd(),Norden,", csv, StringComparison.Ordinal);
        var sheet = await runa.Open($"/shop/events/day/{fair.Id}");
        var bill = await runa.Open(sheet.Document.QuerySelector("[aria-labelledby=bills-teams] a")!.GetAttribute("href")!);
        Assert.Contains("£24.00", bill.Main, StringComparison.Ordinal);
        Assert.Contains("Not strung yet, so not on this bill: 3", bill.Main, StringComparison.Ordinal);
        Assert.Equal("1, 2", sheet.Document.QuerySelectorAll("dt").Single(term => term.TextContent == "Not collected").NextElementSibling!.TextContent);
        Assert.Contains("£24.00, of which £24.00 not paid", sheet.Main, StringComparison.Ordinal);
    }
}
