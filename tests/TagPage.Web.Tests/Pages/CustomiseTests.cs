using TagPage.Core.Customising;
using TagPage.Records.Customising;
using TagPage.Records.Specs;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Pim is grown up here, and racket 1 measures 300 g, 320 mm and 290 kg·cm².</summary>
public sealed class CustomiseTests : IDisposable
{
    private const string Reachable = "?Input.Weight=312&Input.Balance=322&Input.SwingWeight=312";

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
    public async Task Plan_for_nothing_asks_what_is_wanted()
    {
        var page = await _shop.Owner().Open(Page + "?Input.Weight=&Input.Balance=&Input.SwingWeight=");

        Assert.Equal("Enter at least one: weight, balance or swing weight.", Assert.Single(page.Errors));
        Assert.Null(page.Document.QuerySelector("#the-plan"));
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
