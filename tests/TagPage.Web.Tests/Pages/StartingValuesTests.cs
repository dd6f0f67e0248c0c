using TagPage.Core.Forecast;
using TagPage.Records.DueDates;
using TagPage.Records.Shop;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>What other starting values would do is shown before they are saved, and done afterwards.</summary>
public sealed class StartingValuesTests : IDisposable
{
    private const string DueSql = "SELECT due_on FROM racket";

    private readonly TestShop _shop = new();
    private readonly Visitor _runa;

    public StartingValuesTests()
    {
        _shop.Records.Shop();
        var family = _shop.Records.Family();
        _shop.Records.Change("DELETE FROM job");
        _shop.Records.Job(family.Racket, strungOn: TestShop.Today.AddDays(-3));
        _shop.Records.Change("UPDATE string_kind SET material = 'Polyester'");
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    private StartingValues Values => _shop.Get<ShopStore>().Get().StartingValues;

    [Fact]
    public async Task Owner_sees_which_dates_would_move_before_anything_is_saved()
    {
        var before = _shop.Database.Dump();

        var shown = await _runa.Send(await _runa.Open("/shop/settings/lives"), ("Input.Tennis.Polyester", "1"), ("Input.Squash.Polyester", "1"), ("Input.Badminton.Polyester", "1"));

        Assert.Contains("1 of 1 dates would move, 1 to an earlier day and 0 to a later one", shown.Main, StringComparison.Ordinal);
        Assert.Contains("Pim Ferran, racket 1", shown.Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Sent_once_more_it_is_saved_and_the_kept_dates_follow()
    {
        var before = _shop.Records.Text(DueSql);
        var shown = await _runa.Send(await _runa.Open("/shop/settings/tension"), ("Input.Polyester.Threshold", "5"));
        Assert.Equal(25, Values.Tension.Polyester.Threshold);

        await _runa.Send(shown);
        _shop.Get<DueDateWorker>().Run();

        Assert.Equal(5, Values.Tension.Polyester.Threshold);
        Assert.NotEqual(before, _shop.Records.Text(DueSql));
    }

    [Fact]
    public async Task Changed_after_it_was_shown_it_is_shown_again_and_not_saved()
    {
        var shown = await _runa.Send(await _runa.Open("/shop/settings/tension"), ("Input.Polyester.Threshold", "5"));

        var again = await _runa.Send(shown, ("Input.Polyester.Threshold", "6"));

        Assert.Contains("Not saved yet", again.Main, StringComparison.Ordinal);
        Assert.Equal(StartingValues.Default, Values);
    }

    [Fact]
    public async Task Saving_string_lives_leaves_tension_loss_as_it_was_and_the_other_way_round()
    {
        await _runa.Send(await _runa.Send(await _runa.Open("/shop/settings/tension"), ("Input.Aramid.PerHour", "0.6"), ("Input.Shape", "2.5")));
        await _runa.Send(await _runa.Send(await _runa.Open("/shop/settings/lives"), ("Input.Tennis.NaturalGut", "44")));

        Assert.Equal((0.6, 2.5, 44), (Values.Tension.Aramid.PerHour, Values.Wear.Shape, Values.Tennis.NaturalGut.LifeHours));
    }

    [Fact]
    public async Task Going_back_shows_its_effect_and_takes_all_starting_values()
    {
        await _runa.Send(await _runa.Send(await _runa.Open("/shop/settings/tension"), ("Input.Polyester.Threshold", "5")));
        var ask = await _runa.Open("/shop/settings/lives/reset");
        Assert.Contains("to a later one", ask.Main, StringComparison.Ordinal);

        await _runa.Send(ask);

        Assert.Equal(StartingValues.Default, Values);
    }

    [Theory]
    [InlineData("Input.Polyester.Threshold", "0", "Enter a loss between 1 and 90 %.")]
    [InlineData("Input.NaturalGut.Settling", "", "Enter a loss between 0.01 and 30 %.")]
    [InlineData("Input.Aramid.PerHour", "31", "Enter a loss between 0.01 and 30 %.")]
    [InlineData("Input.SettlingTrust", "0.5", "Enter a number between 1 and 50.")]
    [InlineData("Input.ReadingNoise", "0", "Enter percentage points between 0.1 and 20.")]
    [InlineData("Input.Shape", "11", "Enter a number between 1 and 10.")]
    [InlineData("Input.OneIn", "1", "Enter a number between 2 and 100.")]
    [InlineData("Input.FewestBreaks", "0", "Enter a whole number between 1 and 20.")]
    [InlineData("Input.LifeSpread", "0", "Enter a number between 0.05 and 2.")]
    [InlineData("Input.ShapeSpread", "3", "Enter a number between 0.05 and 2.")]
    public async Task Nonsense_is_refused_at_its_field(string field, string typed, string sentence)
    {
        var answer = await _runa.Send(await _runa.Open("/shop/settings/tension"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(StartingValues.Default, Values);
    }
}
