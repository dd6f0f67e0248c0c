using TagPage.Web.Forms;
using TagPage.Web.Pages.Shop.Strings;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Forms;

public sealed class TypedTextTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("  Heron  ", "Heron")]
    [InlineData("Her\u0007on\u009B", "Heron")]
    [InlineData("Zoe\u0308", "Zo\u00EB")]
    [InlineData("\uFFFFHeron\uFFFE", "Heron")]
    [InlineData("\u202EHer\u200Bon\u2069", "Heron")]
    [InlineData("نیک\u200Cنام", "نیک\u200Cنام")]
    [InlineData("鷺沢 澪", "鷺沢 澪")]
    public async Task Text_is_kept_composed_and_without_what_no_keyboard_types(string typed, string kept)
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/strings/new");

        await owner.Send(form, ("Input.Name", typed), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1.25"));

        Assert.Equal(kept, Assert.Single(_shop.Get<StringStore>().List()).Name);
    }

    [Theory]
    [InlineData("   ")]
    [InlineData("\u202E\u200B")]
    [InlineData("\u200D \u00AD")]
    public async Task Text_that_nobody_sees_counts_as_empty(string typed)
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/strings/new");

        var answer = await owner.Send(form, ("Input.Name", typed), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1.25"));

        Assert.Single(answer.Errors);
        Assert.Empty(_shop.Get<StringStore>().List());
    }

    [Fact]
    public async Task Form_without_its_key_is_asked_for_again_and_saves_nothing()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/strings/new");

        var answer = await owner.Send(form,
            ("Input.FormKey", "x"), ("Input.Name", "Heron"), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1.25"));

        Assert.Contains("Load this page once more", answer.Main, StringComparison.Ordinal);
        Assert.Empty(_shop.Get<StringStore>().List());
    }

    [Theory]
    [InlineData("name@example.org", true)]
    [InlineData("o'neil+rackets@club.example", true)]
    [InlineData("", true)]
    [InlineData("name@localhost", false)]
    [InlineData("name example.org", false)]
    [InlineData("a@b@c.example", false)]
    [InlineData("a@b.example\nBcc: c@d.example", false)]
    [InlineData("Name <name@example.org>", false)]
    public void Mail_address_looks_like_one(string typed, bool passes) =>
        Assert.Equal(passes, new MailAddressAttribute().IsValid(typed));
}
