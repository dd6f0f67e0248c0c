using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Pim is grown up here, and racket 1 measures 300 g, 320 mm and 290 kg·cm².</summary>
public sealed class FramePlaceTests : IDisposable
{
    private const string Reachable = "?Input.Weight=312&Input.Balance=322&Input.SwingWeight=312";

    private readonly TestShop _shop = new();
    private readonly long _racket;

    public FramePlaceTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _, _) = _shop.Records.Family();
        _shop.Records.Change("UPDATE player SET junior = 0");
        _shop.Records.Measured(_racket, 300, 320, 290);
    }

    private string Page => $"/shop/customise/{_racket}";

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Places_of_a_frame_are_changed_and_plans_keep_to_them()
    {
        var owner = _shop.Owner();
        var places = await owner.Open($"/shop/customise/places/{_racket}");
        var form = (IHtmlFormElement)places.Document.QuerySelector("#places")!;

        await owner.Send(places, form, ("Input[6].Most", "6"), ("Input[7].Name", "On the strings"), ("Input[7].At", "54,5"), ("Input[7].OnStrings", "true"));

        var page = await owner.Open(Page + Reachable);
        Assert.Contains("Twelve o’clock, at 67.5 cm, at most 6 g", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("On the strings", page.Document.QuerySelector("#the-plan")!.TextContent, StringComparison.Ordinal);
        await owner.Send(await owner.Open($"/shop/customise/places/{_racket}"));
        Assert.Equal(0, _shop.Records.Count("frame_place"));
    }

    [Fact]
    public async Task Place_beyond_the_tip_is_asked_about_and_kept_when_ticked()
    {
        var owner = _shop.Owner();
        var places = await owner.Open($"/shop/customise/places/{_racket}");
        var form = (IHtmlFormElement)places.Document.QuerySelector("#places")!;

        var asked = await owner.Send(places, form, ("Input[6].At", "75"));

        Assert.Equal("75 cm from the butt lies beyond the tip of this frame, at 68.5 cm. Correct it, or tick below to keep it.", Assert.Single(asked.Errors));
        Assert.Equal(0, _shop.Records.Count("frame_place"));
        var tick = asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!;
        await owner.Send(asked, (IHtmlFormElement)asked.Document.QuerySelector("#places")!, ("Input.Confirmed", tick));
        Assert.Equal(1, _shop.Records.Count("frame_place", "at = 75"));
    }

    [Theory]
    [InlineData("Input[0].At", "", "Enter how far it is from the butt.")]
    [InlineData("Input[0].Name", "", "Name the place, or clear the whole line.")]
    [InlineData("Input[3].At", "350", "A place is between 0 and 80 cm from the butt.")]
    public async Task Impossible_places_are_refused(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();
        var places = await owner.Open($"/shop/customise/places/{_racket}");

        var answer = await owner.Send(places, (IHtmlFormElement)places.Document.QuerySelector("#places")!, (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(0, _shop.Records.Count("frame_place"));
    }
}
