using System.Net;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Odalys comes with Pim's two rackets: in with both, one email for both, out with both and one payment.</summary>
public sealed class TogetherTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;
    private readonly long _second;

    public TogetherTests()
    {
        _family = _shop.Records.Family();
        _second = _shop.Records.Racket(_family.Player, number: 2, frame: "Pellmore Meadow 100");
    }

    private string At(string page) => $"/shop/jobs/{page}/client/{_family.Client}";

    private TogetherStore.Row There => _shop.Get<TogetherStore>().Get(Who.Shop, Party.Client(_family.Client))!;

    private void ReadyBoth()
    {
        var moves = _shop.Get<MoveStore>();
        foreach (var racket in new[] { _family.Racket, _second })
            moves.MarkStrung(Who.Shop, _shop.Records.Job(racket), new StrungEntry { StrungOn = TestShop.Today });
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Both_rackets_are_ticked_and_filled_in_as_last_time_and_one_press_takes_them_in()
    {
        var owner = _shop.Owner();
        Assert.Equal(At("drop-off"), (await owner.Open($"/shop/clients/{_family.Client}")).Document.QuerySelector("main a.primary")!.GetAttribute("href"));

        var form = await owner.Open(At("drop-off"));
        Assert.Contains("£49.00", form.Main, StringComparison.Ordinal);
        var answer = await owner.Send(form, ("Input.Rackets[1].MainsTension", "48"), ("Input.Rackets[1].CrossesTension", ""));

        Assert.Equal(At("together"), answer.Location);
        Assert.Equal([(_family.Racket, 52m, 50m), (_second, 48m, 48m)], There.Waiting.Select(job => (job.RacketId, job.MainsTension, job.CrossesTension)));
        Assert.All(There.Waiting, job => Assert.Equal((TestShop.Today.AddDays(2), 2450L), (job.PromisedFor!.Value, job.PriceMinor!.Value)));
        var there = await owner.Open(answer.Location!);
        Assert.Contains("2 rackets are waiting at the bench.", there.Main, StringComparison.Ordinal);
        await owner.Send(form);
        Assert.Equal(2, There.Jobs.Count);
    }

    [Fact]
    public async Task Lost_racket_and_one_still_to_be_collected_are_named_and_not_ticked()
    {
        _shop.Get<MoveStore>().MarkStrung(Who.Shop, _shop.Records.Job(_family.Racket), new StrungEntry { StrungOn = TestShop.Today });
        _shop.Records.Change("UPDATE racket SET lost_since = '2026-11-20' WHERE id = @_second", new { _second });

        var form = await _shop.Owner().Open(At("drop-off"));

        Assert.Equal([false, false], form.Document.QuerySelectorAll("input[type=checkbox][name$=Ticked]").Select(tick => tick.HasAttribute("checked")));
        Assert.Contains("Still to be collected: ticket", form.Main, StringComparison.Ordinal);
        Assert.Contains("Marked as lost", form.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_with_one_racket_is_said_beside_it_and_none_is_taken_in()
    {
        var owner = _shop.Owner();

        var refused = await owner.Send(await owner.Open(At("drop-off")), ("Input.Rackets[1].MainsTension", "abc"));
        Assert.NotNull(refused.Document.QuerySelector("#Input_Rackets_1__MainsTension[aria-invalid]"));
        Assert.Equal(["Pim Ferran, racket 2: Enter a number here, like 24.5, not “abc”."], refused.Document.QuerySelectorAll(".errors li").Select(line => line.TextContent));
        refused = await owner.Send(await owner.Open(At("drop-off")), ("Input.Rackets[1].MainsTension", ""));
        Assert.Equal(["Enter the tension of the mains."], refused.Errors);
        Assert.Equal("Pim Ferran, racket 2: Enter the tension of the mains.", refused.Document.QuerySelector(".errors li")!.TextContent);
        refused = await owner.Send(await owner.Open(At("drop-off")), ("Input.Rackets[0].MainsTension", "999"), ("Input.Rackets[1].MainsId", ""));
        Assert.Equal(2, refused.Errors.Count);

        Assert.Empty(There.Jobs);
    }

    [Fact]
    public async Task What_stands_in_an_unticked_racket_does_not_matter()
    {
        var owner = _shop.Owner();

        await owner.Send(await owner.Open(At("drop-off")), ("Input.Rackets[1].Ticked", "false"), ("Input.Rackets[1].MainsTension", "abc"));

        Assert.Equal([_family.Racket], There.Waiting.Select(job => job.RacketId));
    }

    [Fact]
    public async Task Odd_tension_is_asked_about_at_its_racket_and_confirmed_once_for_all()
    {
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open(At("drop-off")), ("Input.Rackets[1].MainsTension", "78"));
        Assert.Single(asked.Errors);
        Assert.NotNull(asked.Document.QuerySelector("#Input_Rackets_1__MainsTension[aria-invalid]"));
        Assert.Empty(There.Jobs);

        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));
        Assert.Equal(2, There.Jobs.Count);
    }

    [Fact]
    public async Task String_of_the_clients_own_is_filled_in_and_marked_and_one_the_shop_sells_is_asked_about()
    {
        var own = _shop.Records.Kind("Own Gut", "NaturalGut", 1.30m);
        _shop.Records.Change("""
            INSERT INTO money_setting (id, labour_minor) VALUES (1, 1800);
            INSERT INTO string_price (string_id, set_minor) SELECT id, 1000 FROM string_kind WHERE name = 'Heron Spin';
            UPDATE string_kind SET offered = 0 WHERE id = @own;
            UPDATE job SET mains_id = @own, crosses_id = @own, mains_supplied_by = 'Client', crosses_supplied_by = 'Client'
            """, new { own });
        var owner = _shop.Owner();
        var form = await owner.Open(At("drop-off"));
        Assert.Equal([$"{own}", $"{own}"], form.Document.QuerySelectorAll("select[name$=MainsId] option[selected]").Select(option => option.GetAttribute("value")));
        Assert.Equal(2, form.Document.QuerySelectorAll("summary .soon").Length);

        var asked = await owner.Send(form, ("Input.Rackets[1].MainsId", $"{_shop.Records.Kind()}"));

        Assert.StartsWith("You sell this string", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.NotNull(asked.Document.QuerySelector("#Input_Rackets_1__MainsSuppliedBy[aria-invalid]"));
        Assert.Empty(There.Jobs);
        await owner.Send(asked, ("Input.Rackets[1].MainsSuppliedBy", "Shop"));
        Assert.Equal([1800L, 2800L], There.Waiting.Select(job => job.PriceMinor!.Value));
    }

    [Fact]
    public async Task Extras_are_ticked_for_each_racket()
    {
        _shop.Records.Change("INSERT INTO money_setting (id, labour_minor) VALUES (1, 1800); INSERT INTO extra_price (id, kind, amount_minor) VALUES (1, 'Grip', 600), (2, 'Rush', 500)");
        var owner = _shop.Owner();

        var worked = await owner.Send(await owner.Open(At("drop-off")), ("Input.Rackets[1].Extras", "2"), ("Price", "true"));
        Assert.Contains("£41.00", worked.Main, StringComparison.Ordinal);
        await owner.Send(worked);

        Assert.Equal([1800L, 2300L], There.Waiting.Select(job => job.PriceMinor!.Value));
        Assert.Equal("Rush", _shop.Records.Text("SELECT group_concat(kind) FROM charge WHERE kind IN ('Grip', 'Rush')"));
    }

    [Fact]
    public async Task Emails_are_not_offered_while_the_shop_has_no_address()
    {
        ReadyBoth();
        var owner = _shop.Owner();

        var page = await owner.Open(At("ready-all"));

        Assert.Null(page.Document.QuerySelector("main button.primary"));
        Assert.Contains("The shop has no email address of its own yet. Enter it under Settings → The shop.", page.Main, StringComparison.Ordinal);
        Assert.NotNull(page.Document.QuerySelector("main a[href='/shop/settings/shop']"));
        page = await owner.Open($"/shop/jobs/ready/{There.Ready.First().Id}");
        Assert.Null(page.Document.QuerySelector("main button.primary"));
    }

    [Fact]
    public async Task Receipt_of_a_payers_rackets_leads_back_to_the_payer()
    {
        _shop.Records.Change("INSERT INTO payer (name) VALUES ('Eastmere Academy'); UPDATE client SET payer_id = 1");
        ReadyBoth();

        var receipt = await _shop.Owner().Open($"/shop/money/receipts?job={There.Ready.First().Id}");

        Assert.Equal([("/shop/payers/edit/1", "Eastmere Academy"), ("/shop/jobs/together/payer/1", "At the shop")], receipt.Document.QuerySelectorAll(".crumbs a").Select(a => (a.GetAttribute("href"), a.TextContent)));
    }

    [Fact]
    public async Task Price_can_be_worked_out_before_anything_is_saved()
    {
        var owner = _shop.Owner();

        var worked = await owner.Send(await owner.Open(At("drop-off")), ("Input.Rackets[1].Price", "30"), ("Price", "true"));

        Assert.Contains("£54.50", worked.Main, StringComparison.Ordinal);
        Assert.Empty(There.Jobs);
    }

    [Fact]
    public async Task Racket_on_the_bench_already_is_not_ticked_and_an_announced_one_just_comes_in()
    {
        var waiting = _shop.Records.Job(_family.Racket);
        var announced = _shop.Records.Job(_second);
        _shop.Records.Change("INSERT INTO job_request (job_id, asked_in) VALUES (@announced, 'Reminder')", new { announced });
        var owner = _shop.Owner();

        await owner.Send(await owner.Open(At("drop-off")));

        Assert.Equal([waiting, announced], There.Waiting.Select(job => job.Id));
    }

    [Fact]
    public async Task Payer_chooses_first_which_rackets_are_here()
    {
        _shop.Records.Change("INSERT INTO payer (name) VALUES ('Eastmere Academy'); UPDATE client SET payer_id = 1");
        var owner = _shop.Owner();

        var choice = await owner.Open("/shop/jobs/drop-off/payer/1");
        Assert.Equal(2, choice.Document.QuerySelectorAll("[name=racket]").Length);
        Assert.Null(choice.Form());
        var answer = await owner.Send(await owner.Open($"/shop/jobs/drop-off/payer/1?racket={_second}"));

        Assert.Equal("/shop/jobs/together/payer/1", answer.Location);
        Assert.Equal([_second], There.Waiting.Select(job => job.RacketId));
    }

    [Fact]
    public async Task Both_are_handed_out_with_one_payment_and_one_receipt()
    {
        ReadyBoth();
        var owner = _shop.Owner();
        var form = await owner.Open(At("pick-up"));
        Assert.Contains("£49.00", form.Main, StringComparison.Ordinal);

        var answer = await owner.Send(form, ("Input.How", "Cash"));
        await owner.Send(form, ("Input.How", "Cash"));

        var there = await owner.Open(answer.Location!);
        Assert.Contains("2 rackets are handed out and paid.", there.Main, StringComparison.Ordinal);
        Assert.Equal(4900, Assert.Single(_shop.Get<PaymentStore>().OfParty(Who.Shop, Party.Client(_family.Client))).AmountMinor);
        var receipt = await owner.Open(there.Document.QuerySelector(".said a")!.GetAttribute("href")!);
        foreach (var words in new[] { "Receipt for 2 tickets", ", Pim Ferran, 1, strung", ", Pim Ferran, 2, strung", "Paid, cash" })
            Assert.Contains(words, receipt.Main, StringComparison.Ordinal);
        Assert.Equal("£49.00", receipt.Document.QuerySelectorAll(".sums tfoot tr").Single(row => row.TextContent.Contains("Total", StringComparison.Ordinal)).QuerySelector("td")!.TextContent);
        Assert.Equal("£0.00", receipt.Document.QuerySelectorAll(".sums tfoot td")[^1].TextContent);
        Assert.Equal("application/pdf", (await owner.Get(receipt.Document.QuerySelector("main a.primary")!.GetAttribute("href")!)).Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task Racket_that_somebody_handed_out_meanwhile_is_named_in_its_row_and_the_other_stays()
    {
        ReadyBoth();
        var owner = _shop.Owner();
        var form = await owner.Open(At("pick-up"));
        var gone = There.Ready.First();
        _shop.Get<MoveStore>().Collect(Who.Shop, gone.Id, new HandOutEntry { CollectedOn = TestShop.Today });

        var refused = await owner.Send(form, ("Input.How", "Card"));

        Assert.Contains($"Ticket {gone.Ticket} is now", Assert.Single(refused.Errors), StringComparison.Ordinal);
        Assert.Equal(JobState.Strung, Assert.Single(There.Ready).State);
        Assert.Empty(_shop.Get<PaymentStore>().OfParty(Who.Shop, Party.Client(_family.Client)));
    }

    [Fact]
    public async Task Receipt_for_tickets_of_two_who_pay_or_of_none_is_not_there()
    {
        var theirs = _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Ewan Lockyer"), "Bo Lockyer")), strungOn: new(2026, 11, 2));
        var owner = _shop.Owner();

        foreach (var query in new[] { "", $"?job={_family.Job}&job={theirs}", $"?job={_family.Job}&job=999", "?job=abc" })
            Assert.Equal(HttpStatusCode.NotFound, (await owner.Get("/shop/money/receipts" + query)).StatusCode);
    }

    [Fact]
    public async Task One_email_tells_the_household_of_both()
    {
        _shop.Records.Shop();
        ReadyBoth();
        var owner = _shop.Owner();
        var page = await owner.Open(At("ready-all"));
        Assert.Contains("Pim, racket 1; Pim, racket 2", page.Main, StringComparison.Ordinal);
        Assert.Contains("Price for all: £49.00", page.Main, StringComparison.Ordinal);

        await owner.Send(page);
        await owner.Send(page);

        Assert.Contains("these rackets are ready to collect: Pim, racket 1; Pim, racket 2. Price for all: £49.00.", Assert.Single(await _shop.MailsSent()).ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(There.Ready, job => Assert.NotNull(job.ToldReadyAt));
    }

    [Theory]
    [InlineData("/shop/jobs/together/client/99")]
    [InlineData("/shop/jobs/together/payer/1")]
    [InlineData("/shop/jobs/drop-off/stranger/1")]
    [InlineData("/shop/jobs/pick-up/player/1")]
    public async Task Nobody_of_that_kind_is_not_found(string address)
    {
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get(address)).StatusCode);
    }

    [Fact]
    public async Task Three_of_the_same_are_made_in_one_step_and_tagged_in_another()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/new?player={_family.Player}"), ("Input.Same", "3"), ("Input.Frame", "Pellmore Meadow 100"));

        var client = await owner.Open(answer.Location!);
        Assert.Contains("rackets 3 to 5 are on file", client.Main, StringComparison.Ordinal);
        var labels = await owner.Open(client.Document.QuerySelector(".said a")!.GetAttribute("href")!);
        Assert.Contains("Make 3 tags", labels.Main, StringComparison.Ordinal);
        await owner.Send(labels);
        await owner.Send(labels);
        Assert.Equal(4, _shop.Records.Count("tag"));
        Assert.Equal(3, (await owner.Open(labels.Path)).Document.QuerySelectorAll(".label-preview").Length);
    }
}
