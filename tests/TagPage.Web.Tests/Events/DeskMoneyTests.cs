using AngleSharp.Html.Dom;
using TagPage.Records.Events;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Web.Papers;
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
    public async Task Form_asks_whose_mains_and_crosses_are_and_the_next_round_is_filled_in_the_same_way()
    {
        var fair = new Fairground(_shop);
        var kind = _shop.Records.Kind();
        var tablet = await fair.Tablet();
        var form = await tablet.Open(fair.Home + "/in/visitor");
        Assert.Contains("£12.00 with the player’s, £20.00 with the desk’s", form.Main, StringComparison.Ordinal);

        await tablet.Send(form,
            ("Input.Visitor.Name", "Tove Alling"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}"), ("Input.MainsSuppliedBy", "Shop"), ("Input.CrossesSuppliedBy", "Client"));
        Assert.Equal(1600, fair.Board.Entries.Single().PriceMinor);
        Assert.Contains("mains from the desk, crosses the player’s own", (await tablet.Open(fair.Home + "/entry/1")).Main, StringComparison.Ordinal);

        await tablet.Send(await tablet.Open($"{fair.Home}/in/player/{fair.Board.Of(1)!.PlayerId}"));
        Assert.Equal(1600, fair.Board.Of(2)!.PriceMinor);
        await tablet.Send(await tablet.Open($"{fair.Home}/entry/2/change"), ("Input.CrossesSuppliedBy", ""));
        Assert.Equal(2000, fair.Board.Of(2)!.PriceMinor);
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
        foreach (var words in (string[])["Invoice 2026-0001", "Norden Racket Union", "7100 Fjell", "no. 1, Tove Alling, racket 1", "£12.00"])
            Assert.Contains(words, bill.Main, StringComparison.Ordinal);
        var pdf = await runa.Get(made.Location + "?handler=Pdf");
        Assert.Equal("application/pdf", pdf.Content.Headers.ContentType?.MediaType);

        sheet = await runa.Open($"/shop/events/day/{fair.Id}");
        Assert.Contains("2026-0001", sheet.Document.QuerySelector("[aria-labelledby=bills-players]")!.TextContent, StringComparison.Ordinal);
        Assert.Null((await runa.Open($"/shop/events/bill/{fair.Id}?player={fair.Board.Of(1)!.PlayerId}")).Document.QuerySelector("[aria-labelledby=write]"));
    }

    [Fact]
    public async Task Day_with_one_bed_on_one_day_says_so()
    {
        var fair = new Fairground(_shop);
        Strung(fair, "Tove Alling");
        var runa = _shop.Owner();
        Assert.Contains("1 bed,", (await runa.Open($"/shop/events/day/{fair.Id}")).Main, StringComparison.Ordinal);

        var page = await runa.Open($"/shop/events/bill/{fair.Id}?team=Norden");
        var made = await runa.Send(page, (IHtmlFormElement)page.Document.QuerySelector("[aria-labelledby=write] form")!);

        var bill = _shop.Get<BillStore>().Get(Who.Shop, long.Parse(made.Location!.Split('/')[^1], System.Globalization.CultureInfo.InvariantCulture))!;
        Assert.Contains(("Rackets strung", "25 Nov 2026"), BillPaper.Of(bill).Facts);
        Assert.Contains(("Rackets strung", "24 Nov 2026 to 25 Nov 2026"), BillPaper.Of(bill with { FromOn = TestShop.Today.AddDays(-1) }).Facts);
    }

    [Fact]
    public async Task Team_is_one_team_however_its_name_was_typed_and_its_bill_has_all_of_its_rackets()
    {
        var fair = new Fairground(_shop);
        foreach (var (name, team) in new[] { ("Tove Alling", "Norden"), ("Edda Brink", " nordén "), ("Ilse Marrow", "NORDEN"), ("Pim Orsay", "Norden II"), ("Mae Lorne", "Norden") })
        {
            Strung(fair, name);
            _shop.Records.Change("UPDATE event_entry SET team = @team WHERE number = (SELECT MAX(number) FROM event_entry)", new { team });
        }
        var runa = _shop.Owner();

        var teams = (await runa.Open($"/shop/events/day/{fair.Id}")).Document.QuerySelectorAll("[aria-labelledby=bills-teams] tbody tr");
        Assert.Equal(["Norden 4", "Norden II 1"], teams.Select(row => $"{row.QuerySelector("a")!.TextContent} {row.QuerySelectorAll("td")[0].TextContent}"));
        var page = await runa.Open(teams[0].QuerySelector("a")!.GetAttribute("href")!);
        Assert.Contains("£48.00", page.Main, StringComparison.Ordinal);
        var made = await runa.Send(page, (IHtmlFormElement)page.Document.QuerySelector("[aria-labelledby=write] form")!);
        foreach (var words in (string[])["no. 1, Tove", "no. 2, Edda", "no. 3, Ilse", "no. 5, Mae", "£48.00"])
            Assert.Contains(words, (await runa.Open(made.Location!)).Main, StringComparison.Ordinal);

        await Fairground.Press(runa, await runa.Open($"/shop/events/bill/{fair.Id}?team=norden"), "Paid in cash");
        Assert.Equal([4], fair.Board.Entries.Where(entry => entry.IsUnpaid).Select(entry => entry.Number));
    }

    [Fact]
    public async Task Racket_is_paid_from_what_its_player_has_in_credit_and_a_helper_reads_no_amount()
    {
        var fair = new Fairground(_shop);
        Strung(fair, "Tove Alling");
        Strung(fair, "Edda Brink");
        var client = long.Parse(_shop.Records.Text("SELECT id FROM client WHERE name = 'Tove Alling'")!, System.Globalization.CultureInfo.InvariantCulture);
        var (tablet, runa) = (await fair.Tablet(), _shop.Owner());
        Assert.DoesNotContain("credit", (await tablet.Open(fair.Home + "/entry/1")).Main, StringComparison.Ordinal);
        await runa.Send(await runa.Open($"/shop/money/client/{client}"), ("Input.Amount", "30"), ("Input.How", "Cash"));
        // All of it goes to what is owed first.
        Assert.False(fair.Board.Of(1)!.IsUnpaid);
        await tablet.Send(await tablet.Open($"{fair.Home}/in/player/{fair.Board.Of(1)!.PlayerId}"));
        Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, 3, fair.Bram));
        Fairground.Done(_shop.Get<DeskMoveStore>().Strung(Who.Shop, fair.Id, 3));

        Assert.Contains("Handed out, paid from credit (£18.00)", (await runa.Open(fair.Home + "/entry/3")).Main, StringComparison.Ordinal);
        var page = await tablet.Open(fair.Home + "/entry/3");
        Assert.DoesNotContain("18.00", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("credit", (await tablet.Open(fair.Home + "/entry/2")).Main, StringComparison.Ordinal);
        await Fairground.Press(tablet, page, "Handed out, paid from credit");

        Assert.Equal((false, Core.Jobs.JobState.Collected), (fair.Board.Of(3)!.IsUnpaid, fair.Board.Of(3)!.State));
        Assert.Equal(1, _shop.Records.Count("payment"));
        Assert.Equal("600", _shop.Records.Text("SELECT amount_minor - (SELECT SUM(amount_minor) FROM payment_share) FROM payment"));
    }

    [Fact]
    public async Task What_was_paid_in_part_is_not_asked_for_again()
    {
        var fair = new Fairground(_shop);
        Strung(fair, "Tove Alling");
        var runa = _shop.Owner();
        await runa.Send(await runa.Open($"/shop/jobs/paid/{fair.Board.Of(1)!.JobId}"), ("Input.Amount", "5"), ("Input.How", "Cash"));

        Assert.Contains("£7.00", (await (await fair.Tablet()).Open(fair.Home + "/entry/1")).Document.QuerySelector("[aria-labelledby=out]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("£12.00, of which £7.00 not paid", (await runa.Open($"/shop/events/day/{fair.Id}")).Main, StringComparison.Ordinal);
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
        await tablet.Send(page, (IHtmlFormElement)page.Document.QuerySelector("form[aria-label='Where it is']")!, ("Input.Place", "shelf 2"));

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
