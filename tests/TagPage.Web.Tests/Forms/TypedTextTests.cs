using TagPage.Records.Strings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Forms;

public sealed class TypedTextTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("  Heron  ", "Heron")]
    [InlineData("Zoe\u0308", "Zo\u00EB")]
    [InlineData("\uFFFFHeron\uFFFE", "Heron")]
    [InlineData("\uFEFFHer\u200Bon\n", "Heron")]
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

    // Line breaks are those of the Unicode Standard, 5.8; what reverses text is in UAX #9.
    public static TheoryData<string> NotOneLine =>
    [
        "Her\ron", "Her\non", "Her\r\non", "Her\von", "Her\fon", "Her\u0085on", "Her\u2028on", "Her\u2029on", "Her\ton",
        "Her\u0007on", "Her\u009Bon", "\u202EHeron", "Her\u202Don", "Her\u2066on\u2069",
    ];

    private const string OneLine = "Write this on one line, without tabs or other control characters.";

    [Theory]
    [MemberData(nameof(NotOneLine))]
    public async Task Field_of_one_line_refuses_what_begins_another_or_hides_in_it(string typed)
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/strings/new");

        var answer = await owner.Send(form, ("Input.Name", typed), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1.25"));

        Assert.Equal([OneLine], answer.Errors);
        Assert.Empty(_shop.Get<StringStore>().List());
    }

    [Theory]
    [MemberData(nameof(NotOneLine))]
    public async Task Way_to_reach_a_finder_refuses_it_too_in_the_finders_language_and_nothing_goes_out(string typed)
    {
        _shop.Records.Shop();
        var code = _shop.Records.Family().Tag;
        _shop.Records.Agree("Message");
        var finder = _shop.Stranger();
        var page = await finder.FoundPage(code, "?lang=de");

        var answer = await finder.Send(page, page.Form("/message"), ("Input.Message", "Hier."), ("Input.Reach", typed));

        Assert.Equal(["Schreiben Sie das in eine Zeile, ohne Tabulatoren oder andere Steuerzeichen."], answer.Errors);
        Assert.Equal((0, 0), (_shop.Records.Events(), _shop.Records.Count("outbox")));
    }

    [Theory]
    [MemberData(nameof(NotOneLine))]
    public async Task Clients_own_name_refuses_it_too_and_stays_what_it_was(string typed)
    {
        _shop.Records.Shop();
        var client = _shop.Records.Family().Client;
        var odalys = await _shop.OnOwnPage(client);
        _shop.Records.Change("UPDATE own_page_session SET fresh_until = '2099-01-01T00:00:00.000Z'");

        var answer = await odalys.Send(await odalys.Open("/my/contact"), ("Input.Name", typed));

        Assert.Contains(OneLine, answer.Errors);
        Assert.Equal("Odalys Ferran", _shop.Records.Text("SELECT name FROM client"));
    }

    [Theory]
    [MemberData(nameof(NotOneLine))]
    public void Cell_of_one_line_refuses_it_too(string typed) => Assert.NotNull(TagPage.Web.Csv.Kinds.Line(80).Read(typed).Wrong);

    [Fact]
    public async Task Every_line_of_a_finders_message_stays_inside_the_quotation()
    {
        _shop.Records.Shop();
        var code = _shop.Records.Family().Tag;
        _shop.Records.Agree("Message");

        await _shop.Stranger().Writes(code, "a\u2028b\u2029c\u0085d\ve\rf\ng", "07700 900123");

        Assert.Contains("> a\n> b\n> c\n> d\n> e\n> f\n> g\nThe finder can be reached at:\n> 07700 900123\n", Assert.Single(await _shop.MailsSent()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Form_without_its_key_is_asked_for_again_and_saves_nothing()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/strings/new");

        var answer = await owner.Send(form,
            ("Input.FormKey", "x"), ("Input.Name", "Heron"), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1.25"));

        Assert.Contains("Reload this page", answer.Main, StringComparison.Ordinal);
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
