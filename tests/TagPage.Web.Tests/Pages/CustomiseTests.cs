using System.Globalization;
using AngleSharp.Html.Dom;
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
        Measured(_racket, 300, 320, 290);
    }

    private string Page => $"/shop/customise/{_racket}";

    private string SetPage => $"/shop/customise/set/{_player}";

    private IReadOnlyList<AddedMassStore.Row> Pieces => _shop.Get<AddedMassStore>().Of(_racket);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Plan_shows_places_figures_twist_and_a_check_list_and_saves_nothing()
    {
        var before = _shop.Database.Dump();

        var page = await _shop.Owner().Open(Page + Reachable);

        Assert.Equal(200, (int)page.Status);
        Assert.Contains("312 ± 0.2 g", page.Main, StringComparison.Ordinal);
        Assert.Contains("The twist weight changes by 0 kg·cm², worked out from the places", page.Main, StringComparison.Ordinal);
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
        Measured(_racket, 305, 318, 293);

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
    public async Task Frames_that_are_alike_share_one_number_in_the_picture()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        Measured(other, 300, 320, 290);

        var texts = (await _shop.Owner().Open(SetPage)).Document.QuerySelectorAll("svg.set-picture text").Select(text => text.TextContent);

        Assert.Equal(3, texts.Count(text => text == "1, 2"));
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
        Measured(_racket, 252, 330, 200);
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

    [Fact]
    public async Task Places_of_a_frame_are_changed_and_plans_keep_to_them()
    {
        var owner = _shop.Owner();
        var places = await owner.Open($"/shop/customise/places/{_racket}");
        var form = (IHtmlFormElement)places.Document.QuerySelector("#places")!;

        await owner.Send(places, form, ("Input[6].MostG", "6"), ("Input[7].Name", "On the strings"), ("Input[7].AtCm", "54,5"), ("Input[7].OnStrings", "true"));

        var page = await owner.Open(Page + Reachable);
        Assert.Contains("Twelve o’clock, at 67.5 cm, at most 6 g", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("On the strings", page.Document.QuerySelector("#the-plan")!.TextContent, StringComparison.Ordinal);
        await owner.Send(await owner.Open($"/shop/customise/places/{_racket}"));
        Assert.Equal(0, _shop.Records.Count("frame_place"));
    }

    [Theory]
    [InlineData("Input[0].AtCm", "", "Enter how far it is from the butt.")]
    [InlineData("Input[0].Name", "", "Name the place, or empty the whole line.")]
    [InlineData("Input[3].AtCm", "350", "A place lies between 0 and 80 cm from the butt.")]
    public async Task Impossible_places_are_refused(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();
        var places = await owner.Open($"/shop/customise/places/{_racket}");

        var answer = await owner.Send(places, (IHtmlFormElement)places.Document.QuerySelector("#places")!, (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(0, _shop.Records.Count("frame_place"));
    }

    [Fact]
    public async Task Set_shows_how_far_apart_the_frames_are()
    {
        Three();

        var page = await _shop.Owner().Open(SetPage);

        Assert.NotNull(page.Document.QuerySelector("svg.set-picture[role=img]"));
        var rows = page.Document.QuerySelectorAll("section[aria-labelledby=apart] tbody tr").Select(row => row.TextContent).ToList();
        Assert.Contains("4.5 g", rows[0], StringComparison.Ordinal);
        Assert.Contains("6 mm", rows[1], StringComparison.Ordinal);
        Assert.Contains("5 kg·cm²", rows[2], StringComparison.Ordinal);
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
    public async Task Frame_that_cannot_come_along_is_named_with_where_it_stays()
    {
        var rackets = Three();

        var page = await _shop.Owner().Open($"{SetPage}?Input.Match=true&Input.Like={rackets[0]}&{string.Join('&', rackets.Select(r => $"Input.Frames={r}"))}");

        var plan = page.Document.QuerySelector("#the-plan")!.TextContent;
        Assert.DoesNotContain("All come", plan, StringComparison.Ordinal);
        Assert.Contains("Not all can come to 303.2 g, 321 mm, 289 kg·cm²", plan, StringComparison.Ordinal);
        Assert.Contains("racket 2 stays at 305.9 g, 318 mm, 291 kg·cm²", plan, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plans_and_sets_stand_in_the_shops_units()
    {
        Three();
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.WeightUnit", "Oz"), ("Input.LengthUnit", "In"), ("Input.BalanceUnit", "Points"));

        var set = await owner.Open(SetPage);
        var plan = await owner.Open(Page + "?Input.Weight=11");

        Assert.Contains("10.695 oz", set.Document.QuerySelector("section[aria-labelledby=apart] table")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("12.64 in", set.Document.QuerySelector("section[aria-labelledby=apart] table")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", set.Document.QuerySelector("svg.set-picture")!.TextContent, StringComparison.Ordinal);
        var figures = plan.Document.QuerySelector("#the-plan table")!.TextContent;
        Assert.Contains("11 oz", figures, StringComparison.Ordinal);
        Assert.Contains("12.64 in", figures, StringComparison.Ordinal);
        Assert.DoesNotContain(" g", figures, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", figures, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_frame_is_matched_to_one_that_stays_as_it_is()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        Measured(other, 312, 322, 312);
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}&Input.Frames={other}&Input.Like={other}"));

        Assert.Equal(12, Pieces.Sum(piece => piece.Grams));
        Assert.Empty(_shop.Get<AddedMassStore>().Of(other));
        Assert.Single(_shop.Get<SpecStore>().Of(other));
    }

    [Fact]
    public async Task Frame_without_strings_is_compared_with_an_estimate_that_says_so()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        Measured(other, 285, 308, 260, strung: false);

        var page = await _shop.Owner().Open(SetPage);

        Assert.Contains("They are compared with strings, as an estimate: racket 2 with 16.6 g of strings at the middle of the head.", page.Main, StringComparison.Ordinal);
        Assert.Contains("301.6 g", page.Main, StringComparison.Ordinal);
        // 1.5 g of strings more or less, and a scale on either side: two frames 1.6 g apart cannot be told from each other.
        Assert.Contains("1.6 g, no more than measuring leaves open", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Set_of_one_frame_or_of_two_sports_is_no_set()
    {
        var other = _shop.Records.Racket(_player, number: 2);
        Measured(other, 130, 350, 150);
        _shop.Records.Change("UPDATE racket SET sport = 'Squash' WHERE number = 2");
        var owner = _shop.Owner();

        Assert.Contains("Choose at least two frames that were measured.", (await owner.Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}")).Main, StringComparison.Ordinal);
        Assert.Contains("Choose frames of one sport.", (await owner.Open($"{SetPage}?Input.Match=true&Input.Frames={_racket}&Input.Frames={other}")).Main, StringComparison.Ordinal);
    }

    private long[] Three()
    {
        _shop.Records.Change("DELETE FROM spec");
        long[] rackets = [_racket, _shop.Records.Racket(_player, number: 2), _shop.Records.Racket(_player, number: 3)];
        Measured(rackets[0], 303.2m, 321, 289);
        Measured(rackets[1], 305.9m, 318, 291);
        Measured(rackets[2], 301.4m, 324, 294);
        return rackets;
    }

    private void Measured(long racket, decimal grams, decimal mm, decimal swing, bool strung = true) => _shop.Records.Change("""
        INSERT INTO spec (racket_id, measured_on, weight, balance, swing_weight, length, strung, grip_on, dampener_on)
        VALUES (@racket, '2026-11-20', @grams, @mm, @swing, 685, @strung, 1, 0)
        """, new { racket, grams, mm, swing, strung });
}
