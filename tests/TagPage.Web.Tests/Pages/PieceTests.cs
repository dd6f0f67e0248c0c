using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Customising;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Pieces noted by hand. Pim is grown up here, and racket 1 measures 300 g, 320 mm and 290 kg·cm² on 20 November.</summary>
public sealed class PieceTests : IDisposable
{
    private const string OnStrings = "carries mass on its strings";

    private readonly TestShop _shop = new();
    private readonly long _racket;

    public PieceTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _, _) = _shop.Records.Family();
        _shop.Records.Change("UPDATE player SET junior = 0");
        _shop.Records.Measured(_racket, 300, 320, 290);
    }

    private string Page => $"/shop/customise/pieces/{_racket}";

    private IReadOnlyList<AddedMassStore.Row> Pieces => _shop.Get<AddedMassStore>().Of(_racket);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Mass_on_the_strings_is_warned_about_in_every_plan_until_it_is_off()
    {
        var (owner, plan) = (_shop.Owner(), $"/shop/customise/{_racket}?Input.Weight=312");
        Assert.DoesNotContain(OnStrings, (await owner.Open(plan)).Main, StringComparison.Ordinal);

        await Note(owner, ("Input.Place", "Below the crosses"), ("Input.At", "40"), ("Input.Weight", "3"), ("Input.Material", "Silicone"), ("Input.OnStrings", "true"), ("Input.AddedOn", "2026-11-01"));

        Assert.Contains("The frame would be against the rules: carries mass on its strings", (await owner.Open(plan)).Main, StringComparison.Ordinal);
        Assert.Contains("The frame is against the rules: carries mass on its strings", (await owner.Open(Page)).Main, StringComparison.Ordinal);
        Assert.True(Assert.Single(Pieces) is { Place: "Below the crosses", AtCm: 40, Grams: 3, Material: AddedMaterial.Silicone, OnStrings: true, AddedOn: { Month: 11, Day: 1 } });
        await owner.Send(await owner.Open($"{Page}/{Pieces[0].Id}"), ("Input.RemovedOn", "2026-11-19"));
        Assert.Equal(new DateOnly(2026, 11, 19), Assert.Single(Pieces).RemovedOn);
        Assert.DoesNotContain(OnStrings, (await owner.Open(plan)).Main, StringComparison.Ordinal);
        Assert.DoesNotContain(OnStrings, (await owner.Open(Page)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Place_of_the_frame_tells_the_distances_and_a_plan_may_take_the_piece_off()
    {
        var owner = _shop.Owner();

        await Note(owner, ("Input.Place", "three and nine o’clock"), ("Input.Weight", "6"), ("Input.AddedOn", "2026-11-01"));
        await owner.Send(await owner.Open($"/shop/customise/{_racket}?Input.Weight=294&Input.TakeOff=true"));

        Assert.True(Assert.Single(Pieces) is { AtCm: 53, Mass.OffAxisCm: 12.5, RemovedOn: not null });
    }

    [Fact]
    public async Task Shop_that_thinks_in_ounces_and_inches_types_and_keeps_them()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/customising"), ("Input.WeightUnit", "Oz"), ("Input.LengthUnit", "In"));

        await Note(owner, ("Input.Place", "Collar"), ("Input.At", "9.25"), ("Input.Weight", "0.125"));

        Assert.True(Assert.Single(Pieces) is { At: 9.25m, LengthUnit: LengthUnit.In, Weight: 0.125m, WeightUnit: WeightUnit.Oz });
        var page = (await owner.Open(Page)).Document.QuerySelector("section table")!.TextContent;
        Assert.Contains("Collar, 9.25 in", page, StringComparison.Ordinal);
        Assert.Contains("0.125 oz", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Piece_put_on_after_the_racket_was_measured_asks_for_another_measurement()
    {
        var owner = _shop.Owner();

        await Note(owner, ("Input.Place", "Handle"), ("Input.Weight", "5"), ("Input.AddedOn", "2026-11-20"));

        Assert.Contains("A piece was put on or taken off after this frame was measured.", (await owner.Open($"/shop/customise/{_racket}?Input.Weight=312")).Main, StringComparison.Ordinal);
        string[] pages = [Page, $"/shop/customise/{_racket}", $"/shop/rackets/{_racket}", $"/shop/customise/set/{_shop.Records.Text("SELECT id FROM player")}"];
        foreach (var page in pages)
            Assert.Contains($"/shop/rackets/spec/{_racket}", Asks(await owner.Open(page)), StringComparison.Ordinal);

        _shop.Records.Measured(_racket, 305, 318, 291);

        foreach (var page in pages)
            Assert.Equal("", Asks(await owner.Open(page)));

        static string Asks(WebPage page) => string.Concat(page.Document.QuerySelectorAll("p.strong").Where(p => p.TextContent.Contains(" piece was put on", StringComparison.Ordinal)).Select(p => p.InnerHtml));
    }

    [Theory]
    [InlineData("Input.Place", "Somewhere", "Enter how far it is from the butt: the frame’s list has no such place.")]
    [InlineData("Input.Place", "", "Enter where it is.")]
    [InlineData("Input.At", "350", "A place is between 0 and 80 cm (31.5 in) from the butt.")]
    [InlineData("Input.OffAxis", "-1", "It is between 0 and 20 cm (7.9 in) from the middle.")]
    [InlineData("Input.Weight", "0", "Enter more than 0 and at most 100 g (3.5 oz).")]
    [InlineData("Input.Weight", "", "Enter how much it weighs.")]
    [InlineData("Input.AddedOn", "2026-11-26", "This day is in the future.")]
    public async Task Impossible_pieces_are_refused(string field, string typed, string sentence)
    {
        var answer = await Note(_shop.Owner(), ("Input.Place", "Handle"), ("Input.Weight", "5"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Empty(Pieces);
    }

    [Fact]
    public async Task Piece_does_not_come_off_before_it_went_on_and_one_noted_by_mistake_is_forgotten()
    {
        var owner = _shop.Owner();
        await Note(owner, ("Input.Place", "Handle"), ("Input.Weight", "5"), ("Input.AddedOn", "2026-11-10"));
        var page = await owner.Open($"{Page}/{Pieces[0].Id}");

        Assert.Equal("It was put on after that day. Enter the day it came off.", Assert.Single((await owner.Send(page, ("Input.RemovedOn", "2026-11-09"))).Errors));
        Assert.Null(Assert.Single(Pieces).RemovedOn);
        await owner.Send(page, page.Form($"{Page}/{Pieces[0].Id}?handler=Forget"));
        Assert.Empty(Pieces);
    }

    [Fact]
    public async Task Piece_of_another_racket_is_not_reached_through_this_one()
    {
        var owner = _shop.Owner();
        await Note(owner, ("Input.Place", "Handle"), ("Input.Weight", "5"));
        var other = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Bastian"), "Bastian"));

        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await owner.Get($"/shop/customise/pieces/{other}/{Pieces[0].Id}")).StatusCode);
    }

    private async Task<WebPage> Note(Visitor owner, params (string Name, string Value)[] fields) => await owner.Send(await owner.Open(Page), fields);
}
