using System.Text.RegularExpressions;
using TagPage.Core.Colour;
using TagPage.Web.Http;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Style;

/// <summary>The colours of the stylesheet itself, by WCAG 2.2, success criterion 1.4.3: 4.5:1 for text.</summary>
public sealed partial class TokenContrastTests : IDisposable
{
    private static readonly string[] Texts = ["ink", "muted", "accent", "good", "soon", "over"];

    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Every_text_colour_can_be_read_on_every_ground_in_light_and_in_dark() => CheckAll(Tokens());

    [Theory]
    [InlineData("#FFFF00")]
    [InlineData("#000000")]
    [InlineData("#FFFFFF")]
    [InlineData("#777777")]
    [InlineData("#1E5B49")]
    [InlineData("#E8791A")]
    [InlineData("#0000FF")]
    public void Any_accent_of_a_shop_can_be_read_too(string accent)
    {
        _shop.Records.Shop(accent);

        CheckAll(Tokens());
    }

    [Fact]
    public void Accent_that_can_be_read_is_left_as_it_is()
    {
        _shop.Records.Shop("#7A1F4D");

        Assert.Equal(Rgb.Parse("#7A1F4D"), Tokens()[0]["accent"]);
    }

    [Fact]
    public async Task Public_page_carries_the_accent_and_its_policy_allows_exactly_that_style()
    {
        _shop.Records.Shop("#7A1F4D");

        var page = await _shop.Stranger().Open("/");

        var css = page.Document.QuerySelector("style")!.TextContent;
        var hash = Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(css)));
        Assert.Contains("--accent:#7A1F4D", css, StringComparison.Ordinal);
        Assert.Contains($"style-src 'sha256-{hash}';", page.Response.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Signed_in_pages_get_the_accent_from_a_sheet_of_its_own()
    {
        Assert.DoesNotContain("accent.css", (await _shop.Owner().Open("/shop/strings")).Text, StringComparison.Ordinal);
        _shop.Records.Shop("#7A1F4D");

        var page = await _shop.Owner().Open("/shop/strings");
        var address = page.Document.QuerySelector("link[href^='/accent']")!.GetAttribute("href")!;
        var sheet = await _shop.Owner().Open(address);

        Assert.Equal("text/css; charset=utf-8", sheet.Response.Content.Headers.ContentType!.ToString());
        Assert.Contains("--accent:#7A1F4D", sheet.Text, StringComparison.Ordinal);
        Assert.NotNull(sheet.Response.Headers.ETag);
        Assert.True(sheet.Response.Headers.CacheControl!.NoCache);
    }

    private static void CheckAll(List<Dictionary<string, Rgb>> schemes)
    {
        Assert.Equal(2, schemes.Count);
        foreach (var scheme in schemes)
        {
            foreach (var ground in new[] { "paper", "raised" })
                Assert.All(Texts, text => Assert.True(Contrast.Ratio(scheme[text], scheme[ground]) >= 4.5, $"{text} on {ground}"));
            Assert.True(Contrast.Ratio(scheme["on-accent"], scheme["accent"]) >= 4.5);
        }
    }

    /// <summary>Light, then dark, as a browser would resolve them: the last definition wins.</summary>
    private List<Dictionary<string, Rgb>> Tokens()
    {
        var css = _shop.Get<PublicStyle>().Current.Css.Value!;
        var screen = css[..css.IndexOf("@media print", StringComparison.Ordinal)] + _shop.Get<PublicStyle>().Current.OwnAccent;
        var dark = Dark().Matches(screen).Select(m => m.Value).ToList();
        var light = dark.Aggregate(screen, (rest, block) => rest.Replace(block, "", StringComparison.Ordinal));
        return [Last(light), Last(light + string.Concat(dark))];
    }

    private static Dictionary<string, Rgb> Last(string css)
    {
        var tokens = new Dictionary<string, Rgb>();
        foreach (Match token in Token().Matches(css))
            tokens[token.Groups[1].Value] = Rgb.Parse(token.Groups[2].Value);
        return tokens;
    }

    [GeneratedRegex(@"@media [^{]*prefers-color-scheme:\s*dark\)\s*\{\s*:root\s*\{[^}]*\}\s*\}")]
    private static partial Regex Dark();

    [GeneratedRegex("--([a-z-]+):\\s*(#[0-9A-Fa-f]{6})")]
    private static partial Regex Token();
}
