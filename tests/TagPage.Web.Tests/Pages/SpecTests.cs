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
            ("Input.WeightG", "318.5"), ("Input.BalanceMm", "321"), ("Input.SwingWeight", "319"),
            ("Input.Stiffness", "64"), ("Input.StiffnessScale", "frame bench"), ("Input.LengthMm", "685"));

        var spec = Assert.Single(Store.Of(_racket));
        Assert.Equal((TestShop.Today, 318.5m, 321m, 319m, 64m, "frame bench", 685m), (spec.MeasuredOn, spec.WeightG, spec.BalanceMm, spec.SwingWeight, spec.Stiffness, spec.StiffnessScale, spec.LengthMm));
        Assert.True(spec is { Strung: true, GripOn: true, DampenerOn: false });
        var card = await owner.Open($"/shop/rackets/{_racket}");
        Assert.Contains("319 kg·cm²", card.Document.QuerySelector("#specs")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Input.WeightG", "3185", "A racket weighs between 50 and 500 g.")]
    [InlineData("Input.BalanceMm", "32.1", "A balance point lies between 100 and 500 mm from the butt.")]
    [InlineData("Input.SwingWeight", "3190", "A swing weight lies between 30 and 500 kg·cm².")]
    [InlineData("Input.LengthMm", "68.5", "A racket is between 300 and 800 mm long.")]
    [InlineData("Input.Stiffness", "64", "Enter which scale the stiffness is on: two scales cannot be compared.")]
    [InlineData("Input.WeightG", "", "Enter at least one measured number.")]
    [InlineData("Input.MeasuredOn", "1900-01-01", "Check the year.")]
    [InlineData("Input.MeasuredOn", "", "Enter the day it was measured.")]
    [InlineData("Input.MeasuredOn", "yesterday", "“yesterday” does not fit this field. Enter a date as 2027-03-14.")]
    public async Task Impossible_numbers_are_refused(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.WeightG", "318"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Empty(Store.Of(_racket));
    }

    [Theory]
    [InlineData("Input.WeightG", "150", "150 g is unusual for tennis.")]
    [InlineData("Input.SwingWeight", "480", "480 kg·cm² is unusual for tennis.")]
    [InlineData("Input.LengthMm", "750", "750 mm is longer than the 737 mm of the ITF Rules of Tennis, Appendix II.")]
    [InlineData("Input.MeasuredOn", "2027-01-01", "1 Jan 2027 is in the future.")]
    public async Task Unlikely_numbers_are_asked_about_and_kept_when_ticked(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();
        var asked = await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.WeightG", "318"), (field, typed));
        Assert.StartsWith(sentence, Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Empty(Store.Of(_racket));

        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));

        Assert.Single(Store.Of(_racket));
    }

    [Fact]
    public async Task Spec_of_another_racket_is_not_reached_through_this_one()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}"), ("Input.WeightG", "318"));
        var other = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Bastian"), "Bastian"));

        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await owner.Get($"/shop/rackets/spec/{other}/1")).StatusCode);
        await owner.Send(await owner.Open($"/shop/rackets/spec/{_racket}/1"), ("Input.WeightG", "320"), ("Input.Strung", "false"));
        Assert.True(Store.Get(_racket, 1) is { WeightG: 320m, Strung: false });
    }
}
