using TagPage.Records.Customising;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>What a plan warns about. Pim is grown up here, and racket 1 measures 300 g, 320 mm and 290 kg·cm².</summary>
public sealed class PlanCautionTests : IDisposable
{
    private const string Reachable = "?Input.Weight=312&Input.Balance=322&Input.SwingWeight=312";

    private readonly TestShop _shop = new();
    private readonly long _racket;

    public PlanCautionTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _, _) = _shop.Records.Family();
        _shop.Records.Change("UPDATE player SET junior = 0");
        _shop.Records.Measured(_racket, 300, 320, 290);
    }

    private string Page => $"/shop/customise/{_racket}";

    private IReadOnlyList<AddedMassStore.Row> Pieces => _shop.Get<AddedMassStore>().Of(_racket);

    public void Dispose() => _shop.Dispose();

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
    public async Task Handing_over_says_that_there_is_lead_on_the_frame_until_it_is_off()
    {
        var (owner, other) = (_shop.Owner(), _shop.Records.Player(_shop.Records.Client("Bastian"), "Bastian"));
        await owner.Send(await owner.Open(Page + Reachable));
        Assert.Contains("There is lead on this frame.", (await owner.Open($"/shop/rackets/hand-over/{_racket}?to={other}")).Main, StringComparison.Ordinal);

        _shop.Records.Change("UPDATE added_mass SET removed_on = '2026-11-25'");

        Assert.DoesNotContain("lead", (await owner.Open($"/shop/rackets/hand-over/{_racket}?to={other}")).Main, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Squash_frame_over_255_grams_is_warned_about_and_not_forbidden()
    {
        _shop.Records.Change("UPDATE racket SET sport = 'Squash'");
        _shop.Records.Measured(_racket, 252, 330, 200);
        var owner = _shop.Owner();

        var page = await owner.Open(Page + "?Input.Weight=258");

        Assert.Contains("heavier than 255 g (World Squash rules, racket appendix; check the current edition)", page.Main, StringComparison.Ordinal);
        await owner.Send(page);
        Assert.Equal(6, Pieces.Sum(piece => piece.Grams));
    }
}
