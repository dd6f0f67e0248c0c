using System.Buffers.Binary;
using System.Net;
using System.Text.Json;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.OwnPage;

namespace TagPage.Web.Tests.Style;

/// <summary>Manifests as the W3C's Web Application Manifest has them; a browser's own verdict is among the browser tests.</summary>
public sealed class HomeScreenTests : OdalysPhone
{
    [Theory]
    [InlineData("/shop.webmanifest", "/shop")]
    [InlineData("/my.webmanifest", "/my")]
    public async Task Anybodys_browser_reads_where_it_begins_and_finds_icons_of_the_sizes_it_names(string address, string start)
    {
        var visitor = Shop.Stranger();
        var answer = await visitor.Open(address);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        var manifest = JsonDocument.Parse(answer.Text).RootElement;
        Assert.Equal((start, start), (manifest.GetProperty("id").GetString(), manifest.GetProperty("start_url").GetString()));
        Assert.Equal(Shop.Records.Text("SELECT name FROM shop"), manifest.GetProperty("name").GetString());
        foreach (var icon in manifest.GetProperty("icons").EnumerateArray())
            Assert.Equal(icon.GetProperty("sizes").GetString(), await Size(visitor, icon.GetProperty("src").GetString()!));
    }

    [Fact]
    public async Task Bench_and_own_page_name_theirs_and_a_tag_page_none()
    {
        static string? Named(WebPage page) => page.Document.QuerySelector("link[rel=manifest]")?.GetAttribute("href");

        Assert.Equal("/shop.webmanifest", Named(await Shop.Owner().Open("/shop")));
        Assert.Equal("/my.webmanifest", Named(await Phone.Open("/my")));
        Assert.Null(Named(await Shop.Stranger().Open("/t")));
    }

    /// <summary>Width and height stand in bytes 16 to 23 of a PNG file (W3C PNG, IHDR).</summary>
    private static async Task<string> Size(Visitor visitor, string icon)
    {
        using var answer = await visitor.Get(icon);
        var bytes = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        return $"{BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(16))}x{BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(20))}";
    }
}
