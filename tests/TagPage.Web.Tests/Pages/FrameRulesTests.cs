using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Whether a frame is within the rules of its sport stands on its pages before anybody plans anything. Pim is grown up here.</summary>
public sealed class FrameRulesTests : IDisposable
{
    private const string TooHeavy = "The frame is against the rules: heavier than 255 g", TooLong = "The frame is against the rules: longer than 737 mm", OnStrings = "The frame is against the rules: carries mass on its strings";

    private readonly TestShop _shop = new();
    private readonly long _player, _racket;

    public FrameRulesTests()
    {
        _shop.Records.Shop();
        (_, _player, _racket, _, _) = _shop.Records.Family();
        _shop.Records.Measured(_racket, 250, 330, 200);
    }

    private string[] Pages => [$"/shop/rackets/{_racket}", $"/shop/customise/{_racket}", $"/shop/customise/set/{_player}"];

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("UPDATE racket SET sport = 'Squash'; UPDATE spec SET weight = 256", TooHeavy)]
    [InlineData("UPDATE spec SET length = 738", TooLong)]
    [InlineData("INSERT INTO added_mass (racket_id, place, at, on_strings, weight, material, added_on) SELECT id, 'Crosses', 50, 1, 3, 'Silicone', '2026-11-01' FROM racket", OnStrings)]
    public async Task Frame_that_breaks_a_rule_says_so_on_its_card_before_a_plan_and_in_a_set(string how, string sentence)
    {
        var owner = _shop.Owner();
        foreach (var page in Pages)
            Assert.DoesNotContain("against the rules", (await owner.Open(page)).Main, StringComparison.Ordinal);

        _shop.Records.Change(how);

        foreach (var page in Pages)
            Assert.Contains(sentence, (await owner.Open(page)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Weight_alone_is_enough_for_squash()
    {
        _shop.Records.Change("UPDATE racket SET sport = 'Squash'; UPDATE spec SET weight = 256, balance = NULL, swing_weight = NULL");

        Assert.Contains(TooHeavy, (await _shop.Owner().Open(Pages[0])).Main, StringComparison.Ordinal);
        Assert.Contains(TooHeavy, (await _shop.Owner().Open(Pages[1])).Main, StringComparison.Ordinal);
    }
}
