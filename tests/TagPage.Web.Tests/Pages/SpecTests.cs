using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class SpecTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _racket;

    public SpecTests() => _racket = _shop.Records.Family().Racket;

    private SpecStore Store => _shop.Get<SpecStore>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_measures_a_racket_and_the_card_shows_it_with_units()
    {
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"),
            ("Input.Weight", "318.5"), ("Input.Balance", "321"), ("Input.SwingWeight", "319"),
            ("Input.Stiffness", "64"), ("Input.StiffnessScale", "frame bench"), ("Input.Length", "685"));

        var spec = Assert.Single(Store.Of(_racket));
        Assert.Equal((TestShop.Today, 318.5m, 321m, 319m, 64m, "frame bench", 685m), (spec.MeasuredOn, spec.WeightG, spec.BalanceMm, spec.SwingWeight, spec.Stiffness, spec.StiffnessScale, spec.LengthMm));
        Assert.True(spec is { Strung: true, GripOn: true, DampenerOn: false });
        var card = await owner.Open($"/shop/rackets/{_racket}");
        Assert.Contains("319 ± 1 kg·cm²", card.Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Input.Weight", "3185", "A racket weighs between 50 and 500 g.")]
    [InlineData("Input.Balance", "32.1", "A balance point is between 100 and 500 mm from the butt.")]
    [InlineData("Input.SwingWeight", "0", "Enter a swing weight of more than 0 and at most 10000 kg·cm².")]
    [InlineData("Input.SwingWeight", "10001", "Enter a swing weight of more than 0 and at most 10000 kg·cm².")]
    [InlineData("Input.Length", "68.5", "A racket is between 300 and 800 mm long.")]
    [InlineData("Input.Stiffness", "64", "Enter which scale the stiffness is on: two scales cannot be compared.")]
    [InlineData("Input.Weight", "", "Enter at least one measured number.")]
    [InlineData("Input.MeasuredOn", "1900-01-01", "Check the year.")]
    [InlineData("Input.MeasuredOn", "", "Enter the day it was measured.")]
    [InlineData("Input.MeasuredOn", "yesterday", "“yesterday” does not fit this field. Enter a date as 2027-03-14.")]
    public async Task Impossible_numbers_are_refused(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.Weight", "318"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Empty(Store.Of(_racket));
    }

    [Theory]
    [InlineData("Input.Weight", "150", "150 g is unusual for tennis.")]
    [InlineData("Input.SwingWeight", "480", "480 kg·cm² is unusual for tennis.")]
    [InlineData("Input.SwingWeight", "29", "29 kg·cm² is unusual for tennis.")]
    [InlineData("Input.SwingWeight", "3000", "3000 kg·cm² is unusual for tennis.")]
    [InlineData("Input.Length", "750", "750 mm is longer than the 737 mm of the ITF Rules of Tennis, Appendix II.")]
    [InlineData("Input.MeasuredOn", "2027-01-01", "1 Jan 2027 is in the future.")]
    public async Task Unlikely_numbers_are_asked_about_and_kept_when_ticked(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();
        var asked = await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.Weight", "318"), (field, typed));
        Assert.StartsWith(sentence, Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Empty(Store.Of(_racket));

        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));

        Assert.Single(Store.Of(_racket));
    }

    [Theory]
    [InlineData("Input.SwingWeight", "200", "No racket of 318 g that balances at 390 mm has a swing weight of 200 kg·cm²: even with all its mass at that point it would have 267.4.")]
    [InlineData("Input.Length", "380", "The balance point, 390 mm from the butt, lies beyond the tip at 380 mm.")]
    public async Task Figures_that_cannot_be_true_together_are_asked_about_and_kept_when_ticked(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();
        var asked = await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.Weight", "318"), ("Input.Balance", "390"), (field, typed));
        Assert.StartsWith(sentence, Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Empty(Store.Of(_racket));

        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));

        Assert.Single(Store.Of(_racket));
    }

    [Fact]
    public async Task Figures_kept_though_they_cannot_be_true_together_are_pointed_out_wherever_they_stand()
    {
        _shop.Records.Measured(_racket, 318, 390, 246.5m);
        var owner = _shop.Owner();
        string[] pages = [$"/shop/rackets/{_racket}", $"/shop/customise/{_racket}", $"/shop/customise/set/{_shop.Records.Text("SELECT player_id FROM racket")}"];

        foreach (var page in pages)
            Assert.Contains("No racket of 318 g that balances at 390 mm has a swing weight of 246.5 kg·cm²: even with all its mass at that point it would have 267.4.", (await owner.Open(page)).Main, StringComparison.Ordinal);

        _shop.Records.Measured(_racket, 318, 320, 300);
        foreach (var page in pages[1..])
            Assert.DoesNotContain("No racket of", (await owner.Open(page)).Main, StringComparison.Ordinal);
        Assert.Single((await owner.Open(pages[0])).Document.QuerySelectorAll("#specs td.note"), note => note.TextContent.Contains("No racket of 318 g", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Spec_of_another_racket_is_not_reached_through_this_one()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.Weight", "318"));
        var other = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Bastian"), "Bastian"));

        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await owner.Get($"/shop/rackets/spec/{other}/1")).StatusCode);
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}/1"), ("Input.Weight", "320"), ("Input.Strung", "false"));
        Assert.True(Store.Get(_racket, 1) is { WeightG: 320m, Strung: false });
    }

    [Fact]
    public async Task Ounces_and_points_stay_as_they_were_typed_and_are_shown_in_the_shops_units()
    {
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"),
            ("Input.Weight", "11.2"), ("Input.WeightUnit", "Oz"), ("Input.Length", "27"), ("Input.LengthUnit", "In"), ("Input.Balance", "8"), ("Input.BalanceUnit", "Points"));

        Assert.True(Assert.Single(Store.Of(_racket)) is { Weight: 11.2m, WeightUnit: WeightUnit.Oz, Length: 27, Balance: 8, BalanceMm: 317.5m });
        var specs = (await owner.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("#specs")!.TextContent;
        Assert.Contains("317.5 ± 0.1 g", specs, StringComparison.Ordinal);
        Assert.Contains("317.5 ± 1 mm", specs, StringComparison.Ordinal);
        Assert.Contains("Entered as 11.2 oz, balance 8 points, head light, length 27 in.", specs, StringComparison.Ordinal);
        var edit = await owner.Open($"/shop/rackets/spec/{_racket}/1");
        Assert.Equal(("11.2", "8"), (edit.Document.QuerySelector("#Input_Weight")!.GetAttribute("value"), edit.Document.QuerySelector("#Input_Balance")!.GetAttribute("value")));
    }

    [Fact]
    public async Task Shop_that_thinks_in_ounces_and_points_reads_them()
    {
        _shop.Records.Shop();
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.Weight", "350"), ("Input.Length", "685.8"), ("Input.Balance", "317.5"));

        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.WeightUnit", "Oz"), ("Input.BalanceUnit", "Points"));

        var specs = (await owner.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("#specs")!.TextContent;
        Assert.Contains("12.346 ± 0.004 oz", specs, StringComparison.Ordinal);
        Assert.Contains("8 ± 0.4 points head light", specs, StringComparison.Ordinal);
        var next = await owner.Open($"/shop/rackets/spec/{_racket}");
        Assert.Equal("685.8", next.Document.QuerySelector("#Input_Length")!.GetAttribute("value"));
        Assert.Equal("Oz", ((AngleSharp.Html.Dom.IHtmlSelectElement)next.Document.QuerySelector("#Input_WeightUnit")!).Value);
    }

    [Fact]
    public async Task Worked_out_racket_that_is_measured_again_has_a_measured_swing_weight()
    {
        _shop.Records.Change("INSERT INTO spec (racket_id, measured_on, kind, weight, balance, swing_weight, swing_source, strung, grip_on, dampener_on) VALUES (@_racket, '2026-10-01', 'Customised', 312, 322, 312, 'WorkedOut', 1, 1, 0)", new { _racket });
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}/1"), ("Input.Kind", "Customised"), ("Input.Note", "by the book"));
        Assert.Equal(SwingSource.WorkedOut, Assert.Single(Store.Of(_racket)).SwingSource);
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}/1"), ("Input.Kind", "Remeasured"), ("Input.SwingWeight", "309"));

        Assert.True(Assert.Single(Store.Of(_racket)) is { Kind: SpecKind.Remeasured, SwingWeight: 309, SwingSource: SwingSource.Machine });
        Assert.DoesNotContain("worked out", (await owner.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Input.Balance", "Input.TipWeight", "150", "Clear this or the balance point: only one of them can count.")]
    [InlineData("Input.SwingWeight", "Input.PendulumPeriodS", "1.4", "Clear the swing weight or what the pendulum showed: only one of them can count.")]
    public async Task Two_answers_to_one_question_are_not_dropped_in_silence(string field, string other, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.Weight", "318"), ("Input.Length", "685"), (field, "320"), (other, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Empty(Store.Of(_racket));
    }

    [Fact]
    public async Task Gravity_stays_as_it_is_when_other_settings_are_saved()
    {
        _shop.Records.Shop();
        var owner = _shop.Owner();

        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.WeightUnit", "Oz"));

        Assert.Equal(Pendulum.StandardGravity, _shop.Get<ShopStore>().Get().CustomisingValues.Gravity);
    }

    [Fact]
    public async Task Two_scales_give_the_balance()
    {
        var owner = _shop.Owner();

        // Recomputed independently with NumPy: 165 g of 350 g on 27 in balance at 12.728571 in.
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.Weight", "350"), ("Input.Length", "685.8"), ("Input.TipWeight", "165"));

        Assert.True(Assert.Single(Store.Of(_racket)) is { TipWeight: 165, BalanceMm: 323.3m });
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}/1"), ("Input.TipWeight", "170"));
        Assert.Equal(333.1m, Store.Of(_racket)[0].BalanceMm);
    }

    [Theory]
    [InlineData("Input.TipWeight", "165", "Enter weight and length as well: the balance follows from all three.")]
    [InlineData("Input.PendulumPeriodS", "1.4", "Enter weight, balance and where it hangs as well: the swing weight follows from all four.")]
    public async Task What_follows_from_other_figures_asks_for_them(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.Weight", "318"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Empty(Store.Of(_racket));
    }

    [Fact]
    public async Task Tag_page_shows_the_newest_spec_only_while_it_is_switched_on()
    {
        _shop.Records.Shop();
        var code = _shop.Records.Text("SELECT code FROM tag");
        _shop.Records.Change("INSERT INTO spec (racket_id, measured_on, weight, balance, swing_weight, strung, grip_on, dampener_on, note) VALUES (@_racket, '2026-10-01', 287.3, 321, 299, 1, 1, 0, 'canary')", new { _racket });
        var (owner, stranger) = (_shop.Owner(), _shop.Stranger());
        Assert.DoesNotContain("287.3", (await stranger.Open($"/t/{code}")).Main, StringComparison.Ordinal);

        var card = await owner.Open($"/shop/rackets/{_racket}");
        await owner.Send(card, card.Form($"/shop/rackets/{_racket}?handler=SpecsOnTag"), ("show", "true"));

        var page = await stranger.Open($"/t/{code}");
        Assert.Contains("287.3 g", page.Main, StringComparison.Ordinal);
        Assert.Contains("321 mm from the butt end", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("canary", page.Main, StringComparison.Ordinal);
        _shop.Records.Change("UPDATE shop SET customising_values = '{\"WeightUnit\":1,\"BalanceUnit\":3,\"LengthUnit\":2}'");
        var noLength = (await stranger.Open($"/t/{code}")).Main;
        Assert.Contains("10.134 oz", noLength, StringComparison.Ordinal);
        Assert.Contains("12.64 in from the butt end", noLength, StringComparison.Ordinal);
        _shop.Records.Change("UPDATE spec SET length = 685");
        var inPoints = (await stranger.Open($"/t/{code}")).Main;
        Assert.Contains("6.8 points head light", inPoints, StringComparison.Ordinal);
        Assert.DoesNotContain(" ± ", inPoints, StringComparison.Ordinal);
        _shop.Records.Change("UPDATE shop SET customising_values = NULL");
        card = await owner.Open($"/shop/rackets/{_racket}");
        await owner.Send(card, card.Form($"/shop/rackets/{_racket}?handler=SpecsOnTag"), ("show", "false"));
        Assert.DoesNotContain("287.3", (await stranger.Open($"/t/{code}")).Main, StringComparison.Ordinal);
    }
}
