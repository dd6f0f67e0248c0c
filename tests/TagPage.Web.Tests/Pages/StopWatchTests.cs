using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Specs;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>From the form of a spec to the stop-watch and back, without a script.</summary>
public sealed class StopWatchTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _racket;

    public StopWatchTests() => _racket = _shop.Records.Family().Racket;

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task What_was_typed_into_the_spec_comes_along_to_the_stop_watch_and_back()
    {
        var owner = _shop.Owner();
        var watch = await ToTheWatch(owner, $"/shop/rackets/spec/{_racket}",
            ("Input.Weight", "11.2"), ("Input.WeightUnit", "Oz"), ("Input.Length", "27"), ("Input.LengthUnit", "In"), ("Input.Balance", "8"), ("Input.BalanceUnit", "Points"),
            ("Input.Stiffness", "64"), ("Input.StiffnessScale", "frame bench"), ("Input.Strung", "false"), ("Input.MeasuredOn", "2026-11-20"), ("Input.Note", "came in\nbare <b>"));
        Assert.Equal(("11.2", "8"), (Value(watch, "#Input_Weight"), Value(watch, "#Input_Balance")));

        var timed = await owner.Send(watch, ("Input.PendulumAxis", "0,5"), ("Times.Swings", "20"), ("Times.Rounds", "27 27 27"));
        var spec = await owner.Send(timed, timed.Document.QuerySelector<IHtmlFormElement>("#keep")!);
        Assert.Empty(spec.Errors);
        Assert.Equal("came in\nbare <b>", spec.Document.QuerySelector<IHtmlTextAreaElement>("#Input_Note")!.Value.ReplaceLineEndings("\n"));
        await owner.Send(spec);

        var saved = Assert.Single(_shop.Get<SpecStore>().Of(_racket));
        Assert.Equal((11.2m, WeightUnit.Oz, 27m, LengthUnit.In, 8m, BalanceUnit.Points), (saved.Weight!.Value, saved.WeightUnit, saved.Length!.Value, saved.LengthUnit, saved.Balance!.Value, saved.BalanceUnit));
        Assert.Equal((64m, "frame bench", false, new DateOnly(2026, 11, 20), "came in\nbare <b>"), (saved.Stiffness!.Value, saved.StiffnessScale, saved.Strung, saved.MeasuredOn, saved.Note!.ReplaceLineEndings("\n")));
        // It hung half an inch from the butt.
        Assert.Equal((1.35m, 12.7m), (saved.PendulumPeriodS!.Value, saved.PendulumAxisMm!.Value));
        Assert.Equal(new Pendulum(317.514659, 31.75, 1.27, 1.35).SwingWeight(), (double)saved.SwingWeight!.Value, 1);
    }

    [Fact]
    public async Task Stop_watch_opened_by_its_own_address_starts_in_the_shops_units()
    {
        _shop.Records.Shop();
        _shop.Records.Measured(_racket, 320, 321, 300);
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.WeightUnit", "Oz"), ("Input.LengthUnit", "In"), ("Input.BalanceUnit", "Points"));

        var watch = await owner.Open($"/shop/rackets/pendulum/{_racket}");

        // By hand: 320 / 28.349523125 oz; (685 / 2 − 321) / 3.175 points.
        Assert.Equal(("11.2877", "Oz", "6.7717", "Points", "0"),
            (Value(watch, "#Input_Weight"), Choice(watch, "#Input_WeightUnit"), Value(watch, "#Input_Balance"), Choice(watch, "#Input_BalanceUnit"), Value(watch, "#Input_PendulumAxis")));
        Assert.Contains("in", watch.Document.QuerySelector("#Input_PendulumAxis")!.ParentElement!.TextContent, StringComparison.Ordinal);
        var timed = await owner.Send(watch, ("Times.Swings", "20"), ("Times.Rounds", "27 27 27"));
        Assert.StartsWith("291.6 ±", timed.Document.QuerySelector("#result")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Balance_from_two_scales_is_said_where_it_was_not_typed()
    {
        var watch = await ToTheWatch(_shop.Owner(), $"/shop/rackets/spec/{_racket}", ("Input.Weight", "328"), ("Input.Length", "686"), ("Input.TipWeight", "152"));

        // By hand: 152 · 686 / 328 mm.
        Assert.Contains("From two scales: 317.9 mm. Leave it empty", watch.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stop_watch_leaves_as_much_open_as_the_spec_that_is_kept()
    {
        var owner = _shop.Owner();
        var watch = await ToTheWatch(owner, $"/shop/rackets/spec/{_racket}", ("Input.Weight", "328"), ("Input.Length", "686"), ("Input.TipWeight", "152"));

        var timed = await owner.Send(watch, ("Input.PendulumAxis", "0"), ("Times.Swings", "20"), ("Times.Rounds", "27.4 27.4 27.4"));

        // Worked out independently: scale, rule, axis and 0.1 s of each start and stop; the scale counts once, though it went into the balance too.
        Assert.Equal("310.4 ± 3 kg·cm²", timed.Document.QuerySelector("#result")!.TextContent);
        await owner.Send(await owner.Send(timed, timed.Document.QuerySelector<IHtmlFormElement>("#keep")!));
        Assert.Contains("310.4 ± 3 kg·cm²", (await owner.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_goes_back_without_timing_finds_everything_as_it_was_typed_and_nothing_saved()
    {
        var owner = _shop.Owner();
        var watch = await ToTheWatch(owner, $"/shop/rackets/spec/{_racket}", ("Input.Weight", "three hundred"), ("Input.SwingWeight", "319"), ("Input.Note", "soft"), ("Input.MeasuredOn", ""));
        Assert.Equal("Enter a number here, like 24.5, not “three hundred”.", Assert.Single(watch.Errors));

        var spec = await owner.Send(watch, Pressed(watch, "button[formaction]"));

        Assert.Equal("Enter a number here, like 24.5, not “three hundred”.", Assert.Single(spec.Errors));
        Assert.Equal(("three hundred", "319", ""), (Value(spec, "#Input_Weight"), Value(spec, "#Input_SwingWeight"), Value(spec, "#Input_MeasuredOn")));
        Assert.Equal("soft", spec.Document.QuerySelector<IHtmlTextAreaElement>("#Input_Note")!.Value);
        Assert.Empty(_shop.Get<SpecStore>().Of(_racket));
        Assert.NotEmpty((await owner.Send(spec, ("Input.MeasuredOn", "2026-11-20"))).Errors);
    }

    [Fact]
    public async Task Spec_that_is_being_changed_stays_the_one_that_is_changed()
    {
        _shop.Records.Measured(_racket, 318, 320, 300);
        var owner = _shop.Owner();
        var watch = await ToTheWatch(owner, $"/shop/rackets/spec/{_racket}/1", ("Input.SwingWeight", ""), ("Input.Note", "by hand"));

        var timed = await owner.Send(watch, ("Input.PendulumAxis", "0"), ("Times.Rounds", "27 27 27"));
        await owner.Send(await owner.Send(timed, timed.Document.QuerySelector<IHtmlFormElement>("#keep")!));

        Assert.True(Assert.Single(_shop.Get<SpecStore>().Of(_racket)) is { Id: 1, SwingSource: SwingSource.Pendulum, PendulumPeriodS: 1.35m, Note: "by hand" });
    }

    private static async Task<WebPage> ToTheWatch(Visitor owner, string spec, params (string Name, string Value)[] typed)
    {
        var form = await owner.Open(spec);
        return await owner.Send(form, Pressed(form, "button[formaction*='pendulum']"), typed);
    }

    // The form as a browser sends it when this button is pressed.
    private static IHtmlFormElement Pressed(WebPage page, string button)
    {
        var pressed = page.Document.QuerySelector($"main form {button}")!;
        var form = (IHtmlFormElement)pressed.Closest("form")!;
        form.SetAttribute("action", pressed.GetAttribute("formaction"));
        return form;
    }

    private static string? Choice(WebPage page, string field) => page.Document.QuerySelector<IHtmlSelectElement>(field)!.Value;

    private static string? Value(WebPage page, string field) => page.Document.QuerySelector(field)!.GetAttribute("value");
}
