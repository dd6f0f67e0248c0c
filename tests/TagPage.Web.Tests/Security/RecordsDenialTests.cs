using System.Net;
using Dapper;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class RecordsDenialTests : IDisposable
{
    private static readonly string[] Tables = ["client", "payer", "player", "racket", "spec", "tag"];

    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    public static TheoryData<string> Forms =>
    [
        "/shop/clients/new", "/shop/clients/edit/1", "/shop/clients/first-visit", "/shop/payers/new", "/shop/players/new?client=1",
        "/shop/players/edit/1", "/shop/rackets/new?player=1", "/shop/rackets/edit/1", "/shop/rackets/spec/1", "/shop/rackets/hand-over/1?to=2",
        "/shop/tags/new?racket=2", "/shop/tags/replace/LIVE", "/shop/tags/retire/LIVE", "/shop/tags/link/BLANK?racket=2",
    ];

    [Theory]
    [MemberData(nameof(Forms))]
    public async Task Stranger_with_the_owners_own_form_changes_nothing(string path)
    {
        var family = _shop.Records.Family();
        _shop.Records.Racket(_shop.Records.Player(family.Client, "Bo"));
        path = path.Replace("LIVE", family.Tag.ToString(), StringComparison.Ordinal).Replace("BLANK", _shop.Records.BlankTag().ToString(), StringComparison.Ordinal);
        var form = await _shop.Owner().Open(path);
        Assert.Equal(HttpStatusCode.OK, form.Status);
        var before = All();

        var answer = await _shop.Stranger().Send(form, ("Input.Name", "Mallory"), ("Input.Sport", "Tennis"), ("Input.Weight", "300"));

        Assert.Contains(answer.Status, new[] { HttpStatusCode.Redirect, HttpStatusCode.Unauthorized, HttpStatusCode.Forbidden });
        Assert.StartsWith("/account/", new Uri(new Uri("https://localhost"), answer.Location ?? "/account/").AbsolutePath, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(before, All());
    }

    [Theory]
    [InlineData("/shop/clients")]
    [InlineData("/shop/clients/1")]
    [InlineData("/shop/payers")]
    [InlineData("/shop/rackets/1")]
    public async Task Stranger_reads_nothing(string path)
    {
        _shop.Records.Family();

        var answer = await WebPage.Of(await _shop.Stranger().Get(path), path);

        Assert.NotEqual(HttpStatusCode.OK, answer.Status);
        Assert.DoesNotContain("Odalys", answer.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", Readable.Of(answer.Text), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stranger_gets_no_square()
    {
        var family = _shop.Records.Family();

        Assert.NotEqual(HttpStatusCode.OK, (await _shop.Stranger().Get($"/shop/tags/{family.Tag}/qr.png")).StatusCode);
    }

    private string All() => _shop.Database.Read(c =>
        string.Join('\n', Tables.SelectMany(t => c.Query($"SELECT * FROM {t} ORDER BY 1").Select(row => $"{t} {row}"))));
}
