using TagPage.Core.Customising;
using TagPage.Records.Customising;
using TagPage.Records.Specs;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Pim is grown up here, and racket 1 measures 300 g, 320 mm and 290 kg·cm².</summary>
public sealed class CustomiseTests : IDisposable
{
    private const string Reachable = "?Input.Weight=312&Input.Balance=322&Input.SwingWeight=312";

    private static readonly string[] Worked = ["Before", "Planned", "After rounding"];

    private readonly TestShop _shop = new();
    private readonly long _player, _racket;

    public CustomiseTests()
    {
        _shop.Records.Shop();
        (_, _player, _racket, _, _) = _shop.Records.Family();
        _shop.Records.Change("UPDATE player SET junior = 0");
        _shop.Records.Measured(_racket, 300, 320, 290);
    }

    private string Page => $"/shop/customise/{_racket}";

    private IReadOnlyList<AddedMassStore.Row> Pieces => _shop.Get<AddedMassStore>().Of(_racket);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Plan_shows_places_figures_twist_and_a_check_list_and_saves_nothing()
    {
        var before = _shop.Database.Dump();

        var page = await _shop.Owner().Open(Page + Reachable);

        Assert.Equal(200, (int)page.Status);
        Assert.Contains("312 ± 0.2 g", page.Main, StringComparison.Ordinal);
        Assert.Contains("The twist weight changes by 0 ± 0 kg·cm², worked out from the places", page.Main, StringComparison.Ordinal);
        Assert.NotEmpty(page.Document.QuerySelectorAll(".ticks li"));
        Assert.NotNull(page.Document.QuerySelector("svg.frame-picture[role=img]"));
        Assert.Equal(7, page.Document.QuerySelectorAll("#the-plan table")[1].QuerySelectorAll("tbody tr").Length);
        Assert.DoesNotContain("cannot be reached", page.Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Plan_that_is_done_leaves_pieces_and_a_worked_out_spec()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(Page + Reachable));

        Assert.Equal($"/shop/rackets/{_racket}#specs", answer.Location);
        Assert.Equal(12, Pieces.Sum(piece => piece.Grams));
        Assert.All(Pieces, piece => Assert.Equal(AddedMaterial.Lead, piece.Material));
        Assert.True(_shop.Get<SpecStore>().Of(_racket)[0] is { Kind: SpecKind.Customised, WeightG: 312, SwingSource: SwingSource.WorkedOut });
        var card = await owner.Open($"/shop/rackets/{_racket}");
        Assert.Contains("customised, strung", card.Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("as received, strung", card.Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(", customised", (await owner.Open($"/shop/labels/racket/{_racket}?purpose=Measures")).Document.QuerySelector(".label-preview")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pieces_come_off_again_when_the_racket_is_to_be_as_it_was()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open(Page + Reachable));

        await owner.Send(await owner.Open(Page + "?Input.Weight=300&Input.Balance=320&Input.SwingWeight=290&Input.TakeOff=true"));

        Assert.All(Pieces, piece => Assert.Equal(TestShop.Today, piece.RemovedOn));
        // The spec between them was rounded to a tenth.
        Assert.True(_shop.Get<SpecStore>().Of(_racket)[0] is { WeightG: 300, BalanceMm: >= 319.9m and <= 320.1m, SwingWeight: >= 289.8m and <= 290.2m });
    }

    [Fact]
    public async Task Undoing_a_plan_is_not_called_out_of_reach_for_what_rounding_took()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open(Page + Reachable));

        var undo = await owner.Open(Page + "?Input.Weight=300&Input.Balance=320&Input.SwingWeight=290&Input.TakeOff=true");

        Assert.NotNull(undo.Document.QuerySelector("#the-plan"));
        Assert.DoesNotContain("cannot be reached", undo.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Worked_out_spec_leaves_open_what_its_plan_did_until_the_racket_is_measured_again()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open(Page + Reachable));

        var spec = _shop.Get<SpecStore>().Of(_racket)[0];
        Assert.Contains("312 ± 0.2 g", (await owner.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}/{spec.Id}"), ("Input.Note", "checked"));
        Assert.Contains("312 ± 0.2 g", (await owner.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}/{spec.Id}"), ("Input.Weight", "312.4"));
        Assert.Contains("312.4 ± 0.1 g", (await owner.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_made_before_the_racket_was_measured_again_is_not_written_down()
    {
        var owner = _shop.Owner();
        var plan = await owner.Open(Page + Reachable);
        _shop.Records.Measured(_racket, 305, 318, 293);

        var answer = await owner.Send(plan);

        Assert.Contains("The racket was measured or changed after this plan was made. Make the plan again.", answer.Document.QuerySelector(".errors")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(Pieces);
        await owner.Send(answer);
        Assert.InRange(Pieces.Sum(piece => piece.Grams), 6, 8);
    }

    [Fact]
    public async Task Form_sent_twice_is_done_once()
    {
        var owner = _shop.Owner();
        var plan = await owner.Open(Page + Reachable);

        await owner.Send(plan);
        var pieces = Pieces.Count;
        await owner.Send(plan);

        Assert.Equal(pieces, Pieces.Count);
    }

    [Fact]
    public async Task What_cannot_be_reached_says_which_figure_gives_way()
    {
        var page = await _shop.Owner().Open(Page + "?Input.Weight=305&Input.Balance=320&Input.SwingWeight=330");

        Assert.Contains("This cannot be reached with these places", page.Main, StringComparison.Ordinal);
        var alternatives = page.Document.QuerySelectorAll("#the-plan ul:not(.ticks) li").Select(li => li.TextContent).ToList();
        Assert.StartsWith("weight ends ", alternatives[0], StringComparison.Ordinal);
        Assert.StartsWith("swing weight ends 3", alternatives[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_the_handle_and_places_left_out_are_kept()
    {
        var owner = _shop.Owner();

        await owner.Send(await owner.Open(Page + "?Input.Weight=308&Input.OnlyHandle=true&Input.LeaveOut=0&Input.LeaveOut=2"));

        Assert.Equal(("Handle", 8.0), (Assert.Single(Pieces).Place, Pieces[0].Grams));
    }

    [Fact]
    public async Task Every_figure_of_a_plan_shows_what_is_open_about_it()
    {
        var page = await _shop.Owner().Open(Page + Reachable);

        var rows = page.Document.QuerySelectorAll("#the-plan table")[0].QuerySelectorAll("tbody tr");
        Assert.Equal(["Weight", "Balance", "Swing weight", "Recoil weight", "Points head light"], rows.Select(row => row.QuerySelector("th")!.TextContent));
        Assert.All(rows.SelectMany(row => Worked.Select(column => row.QuerySelector($"td[data-label='{column}']")!.TextContent)),
            cell => Assert.Contains(" ± ", cell, StringComparison.Ordinal));
        // By hand: R = S − M/1000·(B − 10)², so 290 − 0.3·22² is off by √(1² + (0.1·0.484)² + (0.1·2·0.3·22)²).
        Assert.Equal("144.8 ± 1.7 kg·cm²", rows[3].QuerySelector("td[data-label=Before]")!.TextContent);
        // And (68.5/2 − 32)/0.3175 by √((0.1/2)² + 0.1²)/0.3175.
        Assert.Equal("7.1 ± 0.4", rows[4].QuerySelector("td[data-label=Before]")!.TextContent.Trim());
        Assert.Matches("twist weight changes by [0-9.-]+ ± [0-9.]+ kg·cm²", page.Main);
    }

    [Fact]
    public async Task Limit_set_on_the_plan_itself_holds_for_this_plan_alone()
    {
        var owner = _shop.Owner();
        var asked = Page + "?Input.Weight=312&Input.Balance=330";
        Assert.True(Grams((await owner.Open(asked)).Main, "Twelve o’clock") > 6);

        var places = (await owner.Open(Page)).Document.QuerySelectorAll("main input[name$='.Place']").Select(input => $"&{input.GetAttribute("name")}={input.GetAttribute("value")}");
        var page = await owner.Open($"{asked}{string.Concat(places)}&Input.Most[6].Weight=6");

        Assert.InRange(Grams(page.Main, "Twelve o’clock"), 0.5, 6);
        Assert.Equal("6", page.Document.QuerySelector("#Input_Most_6__Weight")!.GetAttribute("value"));
        await owner.Send(page);
        Assert.InRange(Pieces.Where(piece => piece.Place == "Twelve o’clock").Sum(piece => piece.Grams), 0.5, 6);
        Assert.Equal(0, _shop.Records.Count("frame_place"));

        static double Grams(string main, string place) => double.Parse(
            System.Text.RegularExpressions.Regex.Match(main, $@"Add ([0-9.]+) g of lead tape[^:]*: {place},").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public async Task Shop_that_thinks_in_ounces_and_inches_finds_them_in_places_pieces_and_labels()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.WeightUnit", "Oz"), ("Input.LengthUnit", "In"), ("Input.BalanceUnit", "Points"));

        var page = await owner.Open(Page + "?Input.Weight=11&Input.Balance=6.5&Input.SwingWeight=312");

        var plan = page.Document.QuerySelector("#the-plan")!;
        Assert.DoesNotMatch(@"[0-9] (g|cm|mm)\b(?!²)", plan.TextContent);
        Assert.Matches(@"Add 0\.[0-9]+ oz of lead tape, [0-9.]+ in of tape", plan.QuerySelector(".ticks")!.TextContent);
        Assert.Contains("Twelve o’clock, at 26.57 in, at most 0.705 oz", page.Main, StringComparison.Ordinal);
        var label = (await owner.Open($"/shop/labels/racket/{_racket}?purpose=Measures")).Document.QuerySelector(".label-preview")!.TextContent;
        Assert.Contains("10.582 oz", label, StringComparison.Ordinal);
        Assert.Contains("7.1 ± 0.4 pt HL", label, StringComparison.Ordinal);
        var places = await owner.Open($"/shop/customise/places/{_racket}");
        Assert.Equal("26.575", places.Document.QuerySelector("[name='Input[6].At']")!.GetAttribute("value"));
        await owner.Send(places, (AngleSharp.Html.Dom.IHtmlFormElement)places.Document.QuerySelector("#places")!, ("Input[6].At", "26.25"));
        Assert.Equal("26.25 In", _shop.Records.Text("SELECT at || ' ' || length_unit FROM frame_place ORDER BY at_cm DESC LIMIT 1"));
    }

    [Fact]
    public async Task Lead_is_cautioned_about_and_a_junior_starts_without()
    {
        var owner = _shop.Owner();
        Assert.Contains("Lead is toxic", (await owner.Open(Page + Reachable)).Main, StringComparison.Ordinal);
        _shop.Records.Change("UPDATE player SET junior = 1");

        var page = await owner.Open(Page + Reachable);

        Assert.DoesNotContain("Lead is toxic", page.Main, StringComparison.Ordinal);
        Assert.Contains("tungsten tape (lead-free)", page.Document.QuerySelector(".ticks")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("This is a junior’s racket: use lead-free tape instead.", (await owner.Open(Page + Reachable + "&Input.Material=Lead")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lead_that_is_on_a_juniors_frame_is_cautioned_about_beside_a_plan_without_any()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open(Page + Reachable));
        _shop.Records.Change("UPDATE player SET junior = 1");

        var plan = (await owner.Open(Page + "?Input.Weight=314&Input.Material=Tungsten")).Document.QuerySelector("#the-plan")!.TextContent;

        Assert.Contains("There is lead on this frame already.", plan, StringComparison.Ordinal);
        Assert.DoesNotContain("use lead-free tape instead", plan, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_for_nothing_asks_what_is_wanted()
    {
        var page = await _shop.Owner().Open(Page + "?Input.Weight=&Input.Balance=&Input.SwingWeight=");

        Assert.Equal("Enter at least one: weight, balance or swing weight.", Assert.Single(page.Errors));
        Assert.Null(page.Document.QuerySelector("#the-plan"));
    }

    [Fact]
    public async Task Handing_over_says_that_there_is_lead_on_the_frame_until_it_is_off()
    {
        var (owner, other) = (_shop.Owner(), _shop.Records.Player(_shop.Records.Client("Bastian"), "Bastian"));
        await owner.Send(await owner.Open(Page + Reachable));
        Assert.Contains("There is lead on this frame.", (await owner.Open($"/shop/rackets/hand-over/{_racket}?to={other}")).Main, StringComparison.Ordinal);

        _shop.Records.Change("UPDATE added_mass SET removed_on = '2026-11-25'");

        Assert.DoesNotContain("lead", (await owner.Open($"/shop/rackets/hand-over/{_racket}?to={other}")).Main, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Tape_is_told_in_centimetres_of_the_shops_own_roll()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.LeadGramsPerCm", "0.25"), ("Input.StepG", "1"));

        var page = await owner.Open(Page + "?Input.Weight=304&Input.LeaveOut=1&Input.LeaveOut=2&Input.LeaveOut=3&Input.LeaveOut=4&Input.LeaveOut=5&Input.LeaveOut=6");

        Assert.Contains("Add 4 g of lead tape, 16 cm of tape: Butt cap, 0 cm from the butt", page.Document.QuerySelector(".ticks")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Squash_frame_over_255_grams_is_warned_about_and_not_forbidden()
    {
        _shop.Records.Change("UPDATE racket SET sport = 'Squash'");
        _shop.Records.Measured(_racket, 252, 330, 200);
        var owner = _shop.Owner();

        var page = await owner.Open(Page + "?Input.Weight=258");

        Assert.Contains("heavier than 255 g (World Squash rules, racket appendix; check the current edition)", page.Main, StringComparison.Ordinal);
        await owner.Send(page);
        Assert.Equal(6, Pieces.Sum(piece => piece.Grams));
    }

    [Fact]
    public async Task Racket_that_was_not_measured_asks_for_that_first()
    {
        var other = _shop.Records.Racket(_player, number: 2);

        var page = await _shop.Owner().Open($"/shop/customise/{other}{Reachable}");

        Assert.Contains("Measure weight, balance and swing weight first", page.Main, StringComparison.Ordinal);
        Assert.Null(page.Document.QuerySelector("#the-plan"));
    }
}
