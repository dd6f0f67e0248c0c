using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Microsoft.AspNetCore.WebUtilities;
using TagPage.Core.Customising;
using TagPage.Records.Specs;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>A racket without a swing weight machine: 320 g, 320 mm, hung at the butt.</summary>
public sealed class PendulumTests : IDisposable
{
    private const string Hung = "?Input.Weight=320&Input.Balance=320&Input.PendulumAxis=0";

    private readonly TestShop _shop = new();
    private readonly long _racket;

    public PendulumTests() => _racket = _shop.Records.Family().Racket;

    private string Page => $"/shop/rackets/pendulum/{_racket}";

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Rounds_typed_in_give_the_swing_weight_and_keep_it_with_a_spec()
    {
        var owner = _shop.Owner();
        // 20 swings in 27 s are 1.35 s each. Recomputed independently with NumPy: 290.783994.
        var page = await Time(owner, Hung + "&Times.Swings=20&Times.Rounds=27+27,0+27.0");
        Assert.StartsWith("290.8 ± ", page.Document.QuerySelector("#result")!.TextContent, StringComparison.Ordinal);

        var spec = await owner.Send(page, page.Document.QuerySelector<IHtmlFormElement>("#keep")!);
        await owner.Send(spec);

        Assert.True(Assert.Single(_shop.Get<SpecStore>().Of(_racket)) is
        {
            SwingWeight: 290.8m, SwingSource: SwingSource.Pendulum, PendulumAxisMm: 0, PendulumPeriodS: 1.35m, PendulumOffS: > 0,
        });
        Assert.Contains("swings in 1.35 s, hung at 0 mm", (await owner.Open($"/shop/rackets/{_racket}")).Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Taps_tell_missed_swings_and_how_sure_the_result_is()
    {
        var taps = string.Join('+', Enumerable.Range(0, 21).Where(i => i != 7).Select(i => (i * 1.35).ToString("0.000", CultureInfo.InvariantCulture)));

        var page = await Time(_shop.Owner(), $"{Hung}&Times.Taps={taps}");

        Assert.StartsWith("290.8 ± ", page.Document.QuerySelector("#result")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("from 20 swings", page.Main, StringComparison.Ordinal);
        Assert.Contains("swings without a tap, 1;", page.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("&Times.Taps=0+1.5+3", "Tap at least 4 times, better twenty.")]
    [InlineData("&Times.Taps=0+1.5+1.2+4+5", "Enter the seconds of each tap, one a line, rising, like 1.42.")]
    [InlineData("&Times.Taps=soon", "Enter the seconds of each tap, one a line, rising, like 1.42.")]
    [InlineData("&Times.Rounds=0", "Enter the seconds of each round, with spaces between them, like 28.4 28.6.")]
    [InlineData("&Times.Rounds=30&Input.PendulumAxis=330", "It hangs at its balance point and cannot swing. Hang it at least 20 mm from there.")]
    public async Task Times_that_cannot_be_are_told(string query, string sentence)
    {
        var hung = query.Contains("PendulumAxis", StringComparison.Ordinal) ? Hung.Replace("&Input.PendulumAxis=0", "", StringComparison.Ordinal) : Hung;

        var page = await Time(_shop.Owner(), hung + query);

        Assert.Equal(sentence, Assert.Single(page.Errors));
        Assert.Null(page.Document.QuerySelector("#result"));
    }

    [Theory]
    [InlineData("&Times.Rounds=1.52", "One swing there and back takes between 0.3 and 5 s; these times make it 0.076 s. Check the number of swings in a round.")]
    [InlineData("&Times.Rounds=2+2+2", "One swing there and back takes between 0.3 and 5 s; these times make it 0.1 s. Check the number of swings in a round.")]
    [InlineData("&Times.Rounds=8", "No racket swings like that: it would come to -132.1 kg·cm², and a swing weight is between 30 and 500. Count whole swings, there and back, and check where it hangs.")]
    [InlineData("&Times.Rounds=60", "No racket swings like that: it would come to 2116.5 kg·cm², and a swing weight is between 30 and 500. Count whole swings, there and back, and check where it hangs.")]
    public async Task Swings_that_no_racket_makes_give_no_figure_to_keep(string query, string sentence)
    {
        var page = await Time(_shop.Owner(), Hung + query);

        Assert.Equal(sentence, Assert.Single(page.Errors));
        Assert.Null(page.Document.QuerySelector("#result"));
        Assert.Empty(page.Document.QuerySelectorAll("#keep"));
    }

    [Fact]
    public async Task Racket_cannot_hang_beyond_its_tip()
    {
        _shop.Records.Change("INSERT INTO spec (racket_id, measured_on, length, strung, grip_on, dampener_on) VALUES (@_racket, '2026-11-20', 680, 1, 1, 0)", new { _racket });

        var page = await Time(_shop.Owner(), Hung.Replace("PendulumAxis=0", "PendulumAxis=760", StringComparison.Ordinal) + "&Times.Rounds=27");

        Assert.Equal("This frame is 680 mm long, so it cannot hang at 760 mm. Measure from the butt.", Assert.Single(page.Errors));
        Assert.Null(page.Document.QuerySelector("#result"));
    }

    [Fact]
    public async Task It_starts_with_the_newest_weight_and_balance_and_works_without_a_script()
    {
        _shop.Records.Change("INSERT INTO spec (racket_id, measured_on, weight, weight_unit, balance, strung, grip_on, dampener_on) VALUES (@_racket, '2026-11-20', 11, 'Oz', 330, 1, 1, 0)", new { _racket });

        var page = await _shop.Owner().Open(Page);

        Assert.Equal(("311.84", "G", "330"), (page.Document.QuerySelector("#Input_Weight")!.GetAttribute("value"), page.Document.QuerySelector<IHtmlSelectElement>("#Input_WeightUnit")!.Value,
            page.Document.QuerySelector("#Input_Balance")!.GetAttribute("value")));
        Assert.True(page.Document.QuerySelector("[data-swings]")!.HasAttribute("hidden"));
    }

    private async Task<WebPage> Time(Visitor owner, string typed) =>
        await owner.Send(await owner.Open(Page), [.. QueryHelpers.ParseQuery(typed).Select(field => (field.Key, field.Value.ToString()))]);
}
