using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class MoneyTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;
    private readonly long _job;

    public MoneyTests()
    {
        _family = _shop.Records.Family();
        _job = _shop.Records.Job(_family.Racket);
    }

    private JobRow Job => _shop.Get<JobStore>().Get(Who.Shop, _job)!;

    private IReadOnlyList<ChargeLine> Lines => _shop.Get<ChargeStore>().Get(Who.Shop, _job)!.Lines;

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Every_amount_on_a_ticket_carries_its_currency()
    {
        var page = await _shop.Owner().Open($"/shop/jobs/{_job}");

        var amounts = page.Document.QuerySelectorAll("main table.charges td, main table td.number").Select(cell => cell.TextContent.Trim()).Where(text => text.Contains('.', StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(amounts);
        Assert.All(amounts, amount => Assert.StartsWith("£", amount, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Owner_writes_a_price_list_and_the_next_job_costs_what_it_says()
    {
        var owner = _shop.Owner();
        var saved = await owner.Send(await owner.Open("/shop/money/prices"), ("Input.Labour", "18,00"), ("Input.Strings[0].Set", "9"), ("Input.Extras[0].Amount", "6.00"),
            ("Input.Extras[3].Name", "Stencil"), ("Input.Extras[3].Amount", "2"), ("Input.TaxPercent", "20"), ("Input.Iban", "de89 3704 0044 0532 0130 00"));
        Assert.Equal("/shop/settings", saved.Location);
        var list = _shop.Get<PriceListStore>().Get();
        Assert.Equal((1800, 2000, "DE89370400440532013000", 2), (list.LabourMinor, list.TaxBp, list.Iban, list.Extras.Count));

        var form = await owner.Open($"/shop/jobs/new?racket={_family.Racket}");
        Assert.Equal("", form.Document.QuerySelector("[name='Input.Price']")!.GetAttribute("value"));
        _shop.Records.Change("UPDATE job SET state = 'Cancelled' WHERE id = @_job", new { _job });
        var made = await owner.Send(form, ("Input.Extras", $"{list.Extras[1].Id}"));

        var ticket = await owner.Open(made.Location!);
        Assert.Contains("£29.00", ticket.Main, StringComparison.Ordinal);
        Assert.Contains("Stencil", ticket.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Input.Labour", "18.005", "Enter an amount in GBP with two decimals at most, like 24.50.")]
    [InlineData("Input.Iban", "DE89370400440532013001", "This is not a valid account number: its check digits do not fit. Compare each character.")]
    [InlineData("Input.Extras[3].Amount", "2", "Enter what this amount is for.")]
    [InlineData("Input.TaxPercent", "101", "Enter a rate between 0 and 100 %, with at most two decimals.")]
    [InlineData("Input.TaxPercent", "2147483648", "Enter a rate between 0 and 100 %, with at most two decimals.")]
    [InlineData("Input.TaxPercent", "7.777", "Enter a rate between 0 and 100 %, with at most two decimals.")]
    public async Task What_is_wrong_with_a_price_list_is_said_beside_its_field(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/money/prices"), (field, typed));

        Assert.Equal([sentence], answer.Errors);
        Assert.Equal(0, _shop.Records.Count("money_setting"));
    }

    [Fact]
    public async Task Owner_changes_the_lines_of_a_price_and_reads_who_changed_them()
    {
        var owner = _shop.Owner();

        var page = await owner.Open($"/shop/money/charge/{_job}");
        await owner.Send(page, ("Input.Lines[0].Kind", "Labour"), ("Input.Lines[0].Amount", "18"), ("Input.Lines[1].Words", "new <b>cap</b>"), ("Input.Lines[1].Amount", "3,50"),
            ("Input.Lines[2].Metres", "6.5"), ("Input.Lines[2].MetrePrice", "1.33"));

        Assert.Equal([(ChargeKind.Labour, 1800), (ChargeKind.Extra, 350), (ChargeKind.Extra, 865)], Lines.Select(l => (l.Kind, l.AmountMinor)));
        page = await owner.Open($"/shop/money/charge/{_job}");
        Assert.Contains("What was changed", page.Main, StringComparison.Ordinal);
        Assert.Contains("24.50", page.Main, StringComparison.Ordinal);
        Assert.Contains("new <b>cap</b>", (await owner.Open($"/shop/jobs/{_job}")).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/shop/money/charge/", "Input.Lines[0].Amount")]
    [InlineData("/shop/jobs/edit/", "Input.Price")]
    public async Task Amount_of_a_paid_ticket_changes_only_after_it_was_asked_about(string address, string field)
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/jobs/paid/{_job}"), ("Input.How", "Card"));

        var asked = await owner.Send(await owner.Open($"{address}{_job}"), (field, "20.00"));

        Assert.Contains("£24.50 of ticket", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Contains("£4.50 would be in credit", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(2450, Job.PriceMinor);
        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));
        Assert.Equal((2000, 450), (Job.PriceMinor, _shop.Get<PaymentStore>().CreditFor(Who.Shop, _job)));
    }

    [Fact]
    public async Task Ticket_is_paid_in_two_parts_and_one_of_them_is_taken_back()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/jobs/paid/{_job}"), ("Input.How", "Cash"), ("Input.Amount", "10"));
        var ticket = await owner.Open($"/shop/jobs/{_job}");
        Assert.Contains("£14.50 still to be paid", ticket.Main, StringComparison.Ordinal);
        await owner.Send(ticket, ticket.Form($"/shop/jobs/paid/{_job}"), ("Input.How", "Transfer"));
        Assert.Equal((TestShop.Today, 2450), (Job.PaidOn!.Value, Job.LaidMinor));

        var back = (await owner.Open($"/shop/jobs/{_job}")).Document.QuerySelector("a[href^='/shop/money/back/']")!.GetAttribute("href")!;
        await owner.Send(await owner.Open(back));

        Assert.Equal((null, 1450), (Job.PaidOn, Job.LaidMinor));
        Assert.Equal(3, _shop.Records.Count("payment"));
    }

    [Theory]
    [InlineData("Account", "", 0)]
    [InlineData("Card", "", 2450)]
    [InlineData("Cash", "5.50", 550)]
    public async Task One_press_hands_out_and_says_what_was_paid(string how, string amount, long laid)
    {
        _shop.Records.Change("UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE id = @_job", new { _job });
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/jobs/collect/{_job}"), ("Input.How", how), ("Input.Amount", amount));

        Assert.Equal((Core.Jobs.JobState.Collected, laid), (Job.State, Job.LaidMinor));
    }

    [Theory]
    [InlineData("/shop/jobs/paid/{0}")]
    [InlineData("/shop/jobs/collect/{0}")]
    [InlineData("/shop/jobs/pick-up/client/{1}")]
    public async Task Amount_finer_than_the_currency_says_so(string address)
    {
        _shop.Records.Change("UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE id = @_job", new { _job });
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(string.Format(System.Globalization.CultureInfo.InvariantCulture, address, _job, _family.Client)), ("Input.How", "Cash"), ("Input.Amount", "1.005"));

        Assert.Equal(["Enter an amount in GBP with two decimals at most, like 24.50."], answer.Errors);
        Assert.Equal(0, _shop.Records.Count("payment"));
    }

    [Fact]
    public async Task Too_much_is_refused_and_the_racket_stays()
    {
        _shop.Records.Change("UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE id = @_job", new { _job });
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/jobs/collect/{_job}"), ("Input.How", "Cash"), ("Input.Amount", "99"));

        Assert.StartsWith("Only £24.50 is still to be paid.", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal((Core.Jobs.JobState.Strung, 0), (Job.State, Job.LaidMinor));
    }

    [Fact]
    public async Task Pages_of_money_change_nothing_when_they_are_looked_at()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/jobs/paid/{_job}"), ("Input.How", "Cash"), ("Input.Amount", "10"));
        var before = _shop.Database.Dump();

        foreach (var path in new[] { $"/shop/money/charge/{_job}", $"/shop/money/charge/{_job}?list=true", "/shop/money/back/1", "/shop/money/prices", $"/shop/jobs/paid/{_job}" })
            Assert.Equal(System.Net.HttpStatusCode.OK, (await owner.Open(path)).Status);

        Assert.Equal(before, _shop.Database.Dump());
    }
}
