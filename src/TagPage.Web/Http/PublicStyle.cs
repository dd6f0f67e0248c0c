using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Html;
using TagPage.Records.Shop;

namespace TagPage.Web.Http;

/// <summary>
/// The public pages' stylesheet with the shop's own accent, put into the page itself so that one request is enough.
/// </summary>
public sealed partial class PublicStyle
{
    private readonly ShopStore _shops;
    private readonly string _css;
    private PublicSheet _kept;

    public PublicStyle(IWebHostEnvironment environment, ShopStore shops)
    {
        using var stream = environment.WebRootFileProvider.GetFileInfo("css/public.css").CreateReadStream();
        using var reader = new StreamReader(stream);
        _shops = shops;
        _css = Shorten(reader.ReadToEnd());
        Accents = new AccentStyle(_css);
        Plain = _kept = Make(null);
    }

    public AccentStyle Accents { get; }

    /// <summary>The product's own; needs no database.</summary>
    public PublicSheet Plain { get; }

    /// <summary>The sheet with the accent the shop has now.</summary>
    public PublicSheet Current
    {
        get
        {
            var (kept, accent) = (_kept, _shops.Get().Accent);
            return kept.Accent == accent ? kept : _kept = Make(accent);
        }
    }

    private PublicSheet Make(string? accent)
    {
        var own = Accents.Of(accent);
        var css = _css + own;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(css)));
        return new PublicSheet(accent, new HtmlString(css), own, $"'sha256-{hash}'");
    }

    /// <summary>Takes comments and indentation out; nothing that could change the meaning.</summary>
    private static string Shorten(string css) => Spaces().Replace(Comments().Replace(css, ""), "\n").Trim();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comments();

    [GeneratedRegex(@"\s*\n\s*")]
    private static partial Regex Spaces();
}

/// <param name="Accent">As the shop set it, or null.</param>
/// <param name="Css">The whole style of a public page.</param>
/// <param name="OwnAccent">The part of it that sets the shop's accent; empty without one.</param>
/// <param name="CspHash">The source expression of CSP that allows exactly this style.</param>
public sealed record PublicSheet(string? Accent, HtmlString Css, string OwnAccent, string CspHash)
{
    /// <summary>Public pages run no script at all; their one inline style is allowed by its hash.</summary>
    public string Policy { get; } =
        $"default-src 'none'; style-src {CspHash}; img-src 'self' data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
}
