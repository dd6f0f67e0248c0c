using System.Security.Cryptography;
using System.Text;
using Microsoft.Net.Http.Headers;

namespace TagPage.Web.Http;

internal static class AccentSheet
{
    public const string Address = "/accent.css";

    /// <summary>The shop's accent for pages whose style comes from files.</summary>
    public static void MapAccentSheet(this WebApplication app) =>
        app.MapGet(Address, (PublicStyle style, HttpContext context) =>
        {
            var css = Encoding.UTF8.GetBytes(style.Current.OwnAccent);
            context.Response.Headers.CacheControl = "no-cache";
            return Results.Bytes(css, "text/css; charset=utf-8", entityTag: new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(css).AsSpan(0, 8))}\""));
        }).AllowAnonymous();
}
