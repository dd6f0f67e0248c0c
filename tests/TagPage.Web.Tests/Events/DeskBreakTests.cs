using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A technician takes a break at the desk.</summary>
public sealed class DeskBreakTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Break_is_shown_wherever_its_taker_is_and_ends_when_they_press_that_they_are_back()
    {
        var fair = new Fairground(_shop);
        var (tablet, runa) = (await fair.Tablet(), _shop.Owner());
        var mine = $"{fair.Home}/technician/{fair.Bram}";
        await Fairground.Press(tablet, await tablet.Open(mine), "A break of 20 minutes now");

        var page = await tablet.Open(mine);
        foreach (var shown in new[] { page, await tablet.Open(fair.Home), await runa.Open($"/shop/events/{fair.Id}") })
            Assert.Contains("on a break until 10:20", shown.Main, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("A break of 20 minutes now", page.Main, StringComparison.Ordinal);

        _shop.Clock.Advance(TimeSpan.FromMinutes(5));
        await Fairground.Press(tablet, page, "Back from the break");
        Assert.DoesNotContain("on a break", (await tablet.Open(mine)).Main, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("on a break", (await runa.Open($"/shop/events/{fair.Id}")).Main, StringComparison.Ordinal);
    }
}
