using TagPage.Records.Specs;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>The numbers of a plan: what is open about them, in whose units. Pim is grown up here, and racket 1 measures 300 g, 320 mm and 290 kg·cm².</summary>
public sealed class PlanFigureTests : IDisposable
{
    private const string Reachable = "?Input.Weight=312&Input.Balance=322&Input.SwingWeight=312";

    private static readonly string[] Worked = ["Before", "Planned", "After rounding"];

    private readonly TestShop _shop = new();
    private readonly long _racket;

    public PlanFigureTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _, _) = _shop.Records.Family();
        _shop.Records.Change("UPDATE player SET junior = 0");
        _shop.Records.Measured(_racket, 300, 320, 290);
    }

    private string Page => $"/shop/customise/{_racket}";

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Shop_that_thinks_in_ounces_and_inches_finds_them_in_places_pieces_and_labels()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.WeightUnit", "Oz"), ("Input.LengthUnit", "In"), ("Input.BalanceUnit", "Points"));

        var page = await owner.Open(Page + "?Input.Weight=11&Input.Balance=6.5&Input.SwingWeight=312");

        var plan = page.Document.QuerySelector("#the-plan")!;
        Assert.DoesNotMatch(@"[0-9] (g|cm|mm)\b(?!²)", plan.TextContent);
        var balance = plan.QuerySelectorAll("table")[0].QuerySelectorAll("tbody tr")[1];
        Assert.Equal("7.1 ± 0.4 points head light", balance.QuerySelector("td[data-label=Before]")!.TextContent);
        Assert.Equal("6.5 points head light", balance.QuerySelector("td[data-label=Wanted]")!.TextContent);
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
    public async Task Pieces_that_are_not_the_planned_ones_rounded_are_said_to_be_others()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.StepG", "1"));
        var found = new List<bool>();
        foreach (var swing in Enumerable.Range(294, 24))
        {
            var page = await owner.Open(Page + $"?Input.SwingWeight={swing}");
            var list = page.Document.QuerySelector(".check-list")!.TextContent;
            var rows = page.Document.QuerySelectorAll("table.tight tbody tr");
            // A place that is only in one of the two columns cannot have been rounded, unless it was rounded to nothing.
            var hasOthers = rows.Any(row => Column(row, "Planned").Length == 0 && Column(row, "Rounded").Length > 0);
            var saysSo = list.Contains("These pieces are not the planned ones rounded", StringComparison.Ordinal);
            Assert.True(saysSo || !hasOthers, $"swing weight {swing}");
            found.Add(saysSo);
        }
        Assert.Contains(true, found);
        Assert.Contains(false, found);

        static string Column(AngleSharp.Dom.IElement row, string name) => row.QuerySelector($"td[data-label='{name}']")!.TextContent;
    }

    [Fact]
    public async Task Tape_is_told_in_centimetres_of_the_shops_own_roll()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.LeadGramsPerCm", "0.25"), ("Input.StepG", "1"));

        var page = await owner.Open(Page + "?Input.Weight=304&Input.LeaveOut=1&Input.LeaveOut=2&Input.LeaveOut=3&Input.LeaveOut=4&Input.LeaveOut=5&Input.LeaveOut=6");

        Assert.Contains("Add 4 g of lead tape, 16 cm of tape: Butt cap, 0 cm from the butt", page.Document.QuerySelector(".ticks")!.TextContent, StringComparison.Ordinal);
    }
}
