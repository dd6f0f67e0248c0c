using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Html;

namespace TagPage.Web.Hosting;

/// <summary>The public pages' stylesheet, put into the page itself so that one request is enough.</summary>
public sealed partial class PublicStyle
{
    public PublicStyle(IWebHostEnvironment environment)
    {
        using var stream = environment.WebRootFileProvider.GetFileInfo("css/public.css").CreateReadStream();
        using var reader = new StreamReader(stream);
        var css = Shorten(reader.ReadToEnd());
        Css = new HtmlString(css);
        CspHash = $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(css)))}'";
    }

    public HtmlString Css { get; }

    /// <summary>The source expression of CSP that allows exactly this style.</summary>
    public string CspHash { get; }

    /// <summary>Takes comments and indentation out; nothing that could change the meaning.</summary>
    private static string Shorten(string css) => Spaces().Replace(Comments().Replace(css, ""), "\n").Trim();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comments();

    [GeneratedRegex(@"\s*\n\s*")]
    private static partial Regex Spaces();
}
