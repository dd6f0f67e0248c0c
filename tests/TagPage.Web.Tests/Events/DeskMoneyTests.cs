using AngleSharp.Html.Dom;
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
        Assert.Contains("Not strung yet, so not on a bill: 3", bill.Main, StringComparison.Ordinal);
        Assert.Equal("1, 2", sheet.Document.QuerySelectorAll("dt").Single(term => term.TextContent == "Not collected").NextElementSibling!.TextContent);
        Assert.Contains("£24.00, of which £24.00 not paid", sheet.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Teams_bill_is_written_under_the_shops_number_with_an_address_as_a_pdf_and_its_players_are_billed_through_it()
    {
        var fair = new Fairground(_shop);
        Strung(fair, "Tove Alling");
        var runa = _shop.Owner();
        var sheet = await runa.Open($"/shop/events/day/{fair.Id}");
        Assert.Contains("1 to be billed through Norden", sheet.Document.QuerySelector("[aria-labelledby=bills-players]")!.TextContent, StringComparison.Ordinal);

        var page = await runa.Open(sheet.Document.QuerySelector("[aria-labelledby=bills-teams] a")!.GetAttribute("href")!);
        var form = (IHtmlFormElement)page.Document.QuerySelector("[aria-labelledby=write] form")!;
        var made = await runa.Send(page, form, ("Input.ToName", "Norden Racket Union"), ("Input.ToAddress", "Quay 3\n7100 Fjell"));
        var bill = await runa.Open(made.Location!);
        foreach (var words in (string[])["Bill 2026-0001", "Norden Racket Union", "7100 Fjell", "no. 1, Tove Alling, racket 1", "£12.00"])
            Assert.Contains(words, bill.Main, StringComparison.Ordinal);
        var pdf = await runa.Get(made.Location + "?handler=Pdf");
        Assert.Equal("application/pdf", pdf.Content.Headers.ContentType?.MediaType);

        sheet = await runa.Open($"/shop/events/day/{fair.Id}");
        Assert.Contains("2026-0001", sheet.Document.QuerySelector("[aria-labelledby=bills-players]")!.TextContent, StringComparison.Ordinal);
        Assert.Null((await runa.Open($"/shop/events/bill/{fair.Id}?player={fair.Board.Of(1)!.PlayerId}")).Document.QuerySelector("[aria-labelledby=write]"));
    }

    [Fact]
    public async Task Player_who_pays_alone_is_billed_what_the_team_would_have_been_and_pays_at_once()
    {
        var fair = new Fairground(_shop);
        Strung(fair, "Tove Alling");
        var runa = _shop.Owner();
        var page = await runa.Open($"/shop/events/bill/{fair.Id}?player={fair.Board.Of(1)!.PlayerId}");
        var form = (IHtmlFormElement)page.Document.QuerySelector("[aria-labelledby=write] form")!;

        var told = await runa.Send(page, form);
        Assert.Contains("Nothing", told.Main, StringComparison.Ordinal);
        var made = await runa.Send(page, form, ("Input.TeamToo", "true"));
        Assert.Contains("Tove Alling", (await runa.Open(made.Location!)).Main, StringComparison.Ordinal);

        await Fairground.Press(runa, await runa.Open($"/shop/events/bill/{fair.Id}?player={fair.Board.Of(1)!.PlayerId}"), "Paid by transfer");
        Assert.Equal(1, _shop.Records.Count("payment", "method = 'Transfer' AND amount_minor = 1200"));
    }

    [Fact]
    public async Task List_of_what_is_not_collected_names_players_to_the_owner_and_no_junior_to_a_helper()
    {
        var fair = new Fairground(_shop);
        Strung(fair, "Pim Ferran", junior: true);
        fair.TakeIn("Tove Alling");
        var tablet = await fair.Tablet();
        var page = await tablet.Open(fair.Home + "/entry/1");
        await tablet.Send(page, (IHtmlFormElement)page.Document.QuerySelector("form[aria-label='Where it lies']")!, ("Input.Place", "shelf 2"));

        var (helpers, owners) = ((await tablet.Open(fair.Home + "/left")).Main, (await _shop.Owner().Open(fair.Home + "/left")).Main);
        foreach (var words in (string[])["shelf 2", "Norden", "25 Nov 10:00", "Tove Alling"])
            Assert.Contains(words, helpers, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", helpers, StringComparison.Ordinal);
        Assert.Contains("Pim Ferran", owners, StringComparison.Ordinal);
    }

    private void Strung(Fairground fair, string name, bool junior = false)
    {
        var number = fair.TakeIn(name, junior);
        Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, number, fair.Bram));
        Fairground.Done(_shop.Get<DeskMoveStore>().Strung(Who.Shop, fair.Id, number));
    }
}
