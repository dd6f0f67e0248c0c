using System.Globalization;
using TagPage.Records.Customising;
using TagPage.Records.Specs;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Pim is grown up here, and racket 1 measures 300 g, 320 mm and 290 kg·cm².</summary>
public sealed class MatchedSetTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _player, _racket;

    public MatchedSetTests()
    {
        _shop.Records.Shop();
        (_, _player, _racket, _, _) = _shop.Records.Family();
        _shop.Records.Change("UPDATE player SET junior = 0");
        _shop.Records.Measured(_racket, 300, 320, 290);
    }

    private string Page => $"/shop/customise/{_racket}";

    private string SetPage => $"/shop/customise/set/{_player}";

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Frames_that_are_alike_share_one_number_in_the_picture()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        _shop.Records.Measured(other, 300, 320, 290);

        var texts = (await _shop.Owner().Open(SetPage)).Document.QuerySelectorAll("svg.set-picture text").Select(text => text.TextContent);

        Assert.Equal(3, texts.Count(text => text == "1, 2"));
    }

    [Fact]
    public async Task Set_shows_how_far_apart_the_frames_are()
    {
        Three();

        var page = await _shop.Owner().Open(SetPage);

        Assert.NotNull(page.Document.QuerySelector("svg.set-picture[role=img]"));
        var rows = page.Document.QuerySelectorAll("section[aria-labelledby=apart] tbody tr").Select(row => row.TextContent).ToList();
        Assert.Contains("4.5 ± 0.1 g", rows[0], StringComparison.Ordinal);
        Assert.Contains("6 ± 1.4 mm", rows[1], StringComparison.Ordinal);
        Assert.Contains("5 ± 1.4 kg·cm²", rows[2], StringComparison.Ordinal);
        Assert.Null(page.Document.QuerySelector("#the-plan"));
    }

    [Fact]
    public async Task Set_becomes_the_same_with_the_least_mass()
    {
        var rackets = Three();
        var owner = _shop.Owner();

        var page = await owner.Open($"{SetPage}?Input.Match=true&{string.Join('&', rackets.Select(r => $"Input.Frames={r}"))}");
        await owner.Send(page);

        // The least with a place at 68.5 cm is 13.55 g; the frames' own lists end at 67.5 cm, and pieces are half grams.
        Assert.InRange(double.Parse(_shop.Records.Text("SELECT CAST(SUM(grams) AS TEXT) FROM added_mass"), CultureInfo.InvariantCulture), 12.5, 15.5);
        var specs = rackets.Select(racket => _shop.Get<SpecStore>().Of(racket)[0]).ToList();
        Assert.All(specs, spec =>
        {
            Assert.InRange(spec.WeightG!.Value, specs[0].WeightG!.Value - 0.6m, specs[0].WeightG!.Value + 0.6m);
            Assert.InRange(spec.BalanceMm!.Value, specs[0].BalanceMm!.Value - 1.5m, specs[0].BalanceMm!.Value + 1.5m);
            Assert.InRange(spec.SwingWeight!.Value, specs[0].SwingWeight!.Value - 1.5m, specs[0].SwingWeight!.Value + 1.5m);
        });
    }

    [Fact]
    public async Task Set_is_drawn_before_and_after_the_plan_on_one_scale()
    {
        var rackets = Three();

        var page = await _shop.Owner().Open($"{SetPage}?Input.Match=true&{string.Join('&', rackets.Select(r => $"Input.Frames={r}"))}");

        var (before, after) = (page.Document.QuerySelector("svg.set-picture.before")!, page.Document.QuerySelector("svg.set-picture.after")!);
        Assert.Equal(9, before.QuerySelectorAll("circle").Length);
        Assert.Equal(9, after.QuerySelectorAll("path.open").Length);
        Assert.Equal(before.QuerySelectorAll("path.target").Select(path => path.GetAttribute("d")), after.QuerySelectorAll("path.target").Select(path => path.GetAttribute("d")));
        Assert.True(Wide(after) < Wide(before) / 3, $"{Wide(before)} before, {Wide(after)} after");
        var rows = page.Document.QuerySelectorAll("section[aria-labelledby=apart] tbody tr").Select(row => row.TextContent).ToList();
        Assert.Contains("303.2 ± 0.1 g", rows[0], StringComparison.Ordinal);
        Assert.Contains("4.5 ± 0.1 g", rows[0], StringComparison.Ordinal);
        Assert.Contains("Weight, after", rows[1], StringComparison.Ordinal);

        // Of the weights, which come first.
        static double Wide(AngleSharp.Dom.IElement picture)
        {
            var x = picture.QuerySelectorAll("circle").Take(3).Select(dot => double.Parse(dot.GetAttribute("cx")!, CultureInfo.InvariantCulture)).ToList();
            return x.Max() - x.Min();
        }
    }

    [Fact]
    public async Task Limit_set_on_the_plan_holds_for_every_frame_of_the_set()
    {
        var rackets = Three();
        var owner = _shop.Owner();
        var address = $"{SetPage}?Input.Match=true&{string.Join('&', rackets.Select(r => $"Input.Frames={r}"))}";
        Assert.Contains(": Butt cap,", (await owner.Open(address)).Document.QuerySelector("#the-plan")!.TextContent, StringComparison.Ordinal);

        var page = await owner.Open($"{address}&Input.Most[0].Place=Butt cap&Input.Most[0].Weight=0");

        Assert.DoesNotContain(": Butt cap,", page.Document.QuerySelector("#the-plan")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Set_says_how_near_its_frames_come_and_offers_labels_only_when_it_is_done()
    {
        var rackets = Three();
        var owner = _shop.Owner();

        var page = await owner.Open($"{SetPage}?Input.Match=true&{string.Join('&', rackets.Select(r => $"Input.Frames={r}"))}");

        Assert.Matches("All come within [0-9.]+ g, [0-9.]+ mm and [0-9.]+ kg·cm² of", page.Document.QuerySelector("#the-plan")!.TextContent);
        Assert.Empty(page.Document.QuerySelectorAll("a[href*='/shop/labels/racket/']"));
        await owner.Send(page);
        Assert.Equal(3, (await owner.Open(SetPage)).Document.QuerySelectorAll("a[href*='/shop/labels/racket/']").Length);
    }

    [Fact]
    public async Task Set_that_rounded_pieces_bring_no_nearer_is_left_as_it_is()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        _shop.Records.Measured(other, 300.2m, 320.1m, 290.2m);

        var page = await _shop.Owner().Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}&Input.Frames={other}");

        Assert.Contains("Leave them as they are: pieces in steps of 0.5 g would gain too little for the mass they add.", page.Main, StringComparison.Ordinal);
        Assert.Equal(2, page.Document.QuerySelectorAll(".check-list > p:first-of-type").Count(p => p.TextContent == "Nothing to do."));
        Assert.DoesNotContain("It is done", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Set_that_measuring_cannot_tell_apart_matches_already_and_shows_a_plan_only_when_pressed()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        _shop.Records.Measured(other, 300.1m, 320.7m, 290.4m);
        var owner = _shop.Owner();

        var page = await owner.Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}&Input.Frames={other}&Input.OnlyHandle=true");

        Assert.Contains("None of their figures differ from each other by more than measuring can tell.", page.Document.QuerySelector("#matched")!.ParentElement!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.Document.QuerySelector("#the-plan"));
        var pressed = string.Join('&', page.Document.QuerySelectorAll("section[aria-labelledby=matched] input").Select(input => $"{input.GetAttribute("name")}={input.GetAttribute("value")}"));
        Assert.NotNull((await owner.Open($"{SetPage}?{pressed}&Input.Anyway=true")).Document.QuerySelector("#the-plan"));
    }

    [Fact]
    public async Task Set_that_cannot_reach_what_is_wanted_says_which_figure_gives_way()
    {
        var rackets = Three();

        var page = await _shop.Owner().Open($"{SetPage}?Input.Match=true&Input.Weight=304&Input.SwingWeight=305&{string.Join('&', rackets.Select(r => $"Input.Frames={r}"))}");

        Assert.Matches(@"The nearest that they can share is [0-9.]+ g, [0-9.]+ mm, 305 kg·cm²: weight ends [0-9.]+ g above\. With rounded pieces all come within", page.Document.QuerySelector("#the-plan")!.TextContent);
    }

    [Fact]
    public async Task Frame_that_cannot_come_along_is_named_with_where_it_stays()
    {
        var rackets = Three();

        var page = await _shop.Owner().Open($"{SetPage}?Input.Match=true&Input.Like={rackets[0]}&{string.Join('&', rackets.Select(r => $"Input.Frames={r}"))}");

        var plan = page.Document.QuerySelector("#the-plan")!.TextContent;
        Assert.DoesNotContain("All come", plan, StringComparison.Ordinal);
        Assert.Contains("Not all can reach 303.2 g, 321 mm, 289 kg·cm²", plan, StringComparison.Ordinal);
        Assert.Contains("racket 2 stays at 305.9 g, 318 mm, 291 kg·cm²", plan, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Set_comes_to_a_weight_that_is_wanted_and_shows_no_wanted_figure_that_nobody_asked_for()
    {
        _shop.Records.Change("DELETE FROM spec");
        var other = _shop.Records.Racket(_player, number: 2);
        _shop.Records.Measured(_racket, 318.5m, 321, 319);
        _shop.Records.Measured(other, 319.1m, 320, 317);

        var page = await _shop.Owner().Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}&Input.Frames={other}&Input.Weight=320&Input.OnlyHandle=true");

        var plan = page.Document.QuerySelector("#the-plan")!;
        Assert.Matches(@"All come within 0\.1 g of what is wanted\. With these places they cannot be made the same in everything else, or only with more mass than that is worth: racket 1 ends at 320 g, [0-9.]+ mm, 319 kg·cm²; racket 2 ends at 320\.1 g", plan.TextContent);
        Assert.Equal(["320 g", "320 g"], plan.QuerySelectorAll("td[data-label=Wanted]").Select(cell => cell.TextContent).Where(text => text.Length > 0));
        Assert.Equal(2, plan.QuerySelectorAll("tbody tr:first-child td[data-label=Planned]").Count(cell => cell.TextContent.StartsWith("320 ± ", StringComparison.Ordinal)));
        Assert.DoesNotContain("Leave", plan.TextContent, StringComparison.Ordinal);
        // Only the weight has a line to come to.
        Assert.Single(page.Document.QuerySelectorAll("svg.set-picture.after path.target"));
    }

    [Fact]
    public async Task Frame_that_is_heavier_than_wanted_is_named_and_the_other_comes_to_it()
    {
        _shop.Records.Change("DELETE FROM spec");
        var other = _shop.Records.Racket(_player, number: 2);
        _shop.Records.Measured(_racket, 334, 314, 327);
        _shop.Records.Measured(other, 338, 316, 333);

        var plan = (await _shop.Owner().Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}&Input.Frames={other}&Input.Weight=335.5")).Document.QuerySelector("#the-plan")!;

        Assert.Matches("racket 1 ends at 335.5 g, [^;]*; racket 2 stays at 338 g, 316 mm, 333 kg·cm²", plan.TextContent);
        Assert.Contains("This one does not reach what is wanted: weight ends 2.5 g above.", plan.QuerySelectorAll(".frame-plan")[1].TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("▲", plan.QuerySelectorAll(".frame-plan")[0].QuerySelector("p")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Nothing to do.", plan.QuerySelectorAll(".frame-plan")[1].TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("0.3")]
    [InlineData("20")]
    public async Task Weight_that_no_racket_has_is_asked_about_and_not_planned_for(string weight)
    {
        var rackets = Three();

        var page = await _shop.Owner().Open($"{SetPage}?Input.Match=true&Input.Weight={weight}&{string.Join('&', rackets.Select(r => $"Input.Frames={r}"))}");

        Assert.Equal((200, "A racket weighs between 50 and 500 g."), ((int)page.Status, Assert.Single(page.Errors)));
        Assert.Null(page.Document.QuerySelector("#the-plan"));
        var one = await _shop.Owner().Open($"{Page}?Input.Weight={weight}");
        Assert.Equal((200, "A racket weighs between 50 and 500 g."), ((int)one.Status, Assert.Single(one.Errors)));
    }

    [Fact]
    public async Task Plans_and_sets_stand_in_the_shops_units()
    {
        Three();
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.WeightUnit", "Oz"), ("Input.LengthUnit", "In"), ("Input.BalanceUnit", "Points"));

        var set = await owner.Open(SetPage);
        var plan = await owner.Open(Page + "?Input.Weight=11");

        Assert.Contains("10.695 ± 0.004 oz", set.Document.QuerySelector("section[aria-labelledby=apart] table")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("12.64 ± 0.04 in", set.Document.QuerySelector("section[aria-labelledby=apart] table")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", set.Document.QuerySelector("svg.set-picture")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("in from the butt", set.Document.QuerySelector("#Input_Balance")!.ParentElement!.TextContent, StringComparison.Ordinal);
        var figures = plan.Document.QuerySelector("#the-plan table")!.TextContent;
        Assert.Contains("11 oz", figures, StringComparison.Ordinal);
        Assert.Contains("12.64 ± 0.04 in", figures, StringComparison.Ordinal);
        Assert.DoesNotContain(" g", figures, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", figures, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_frame_is_matched_to_one_that_stays_as_it_is()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        _shop.Records.Measured(other, 312, 322, 312);
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}&Input.Frames={other}&Input.Like={other}"));

        Assert.Equal(12, _shop.Get<AddedMassStore>().Of(_racket).Sum(piece => piece.Grams));
        Assert.Empty(_shop.Get<AddedMassStore>().Of(other));
        Assert.Single(_shop.Get<SpecStore>().Of(other));
    }

    [Fact]
    public async Task Frame_without_strings_is_compared_with_an_estimate_that_says_so()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        _shop.Records.Measured(other, 284.6m, 308, 260, strung: false);

        var page = await _shop.Owner().Open(SetPage);

        Assert.Contains("They are compared as if strung, as an estimate: racket 2 with 16.6 ± 1.5 g of strings at the middle of the head.", page.Main, StringComparison.Ordinal);
        Assert.Contains("301.2 ± 1.5 g", page.Main, StringComparison.Ordinal);
        // 1.5 g of strings more or less on one side, and a scale on either: √(1.5² + 0.1² + 0.1²) = 1.5 by hand.
        Assert.Contains("1.2 ± 1.5 g, within the margin of error", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Set_of_one_frame_or_of_two_sports_is_no_set()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        _shop.Records.Measured(other, 130, 350, 150);
        _shop.Records.Change("UPDATE racket SET sport = 'Squash' WHERE number = 2");
        var owner = _shop.Owner();

        Assert.Contains("Choose at least two frames that were measured.", (await owner.Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}")).Main, StringComparison.Ordinal);
        Assert.Contains("Choose frames of one sport.", (await owner.Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}&Input.Frames={other}")).Main, StringComparison.Ordinal);
    }

    private long[] Three()
    {
        _shop.Records.Change("DELETE FROM spec");
        long[] rackets = [_racket, _shop.Records.Racket(_player, number: 2), _shop.Records.Racket(_player, number: 3)];
        _shop.Records.Measured(rackets[0], 303.2m, 321, 289);
        _shop.Records.Measured(rackets[1], 305.9m, 318, 291);
        _shop.Records.Measured(rackets[2], 301.4m, 324, 294);
        return rackets;
    }
}
