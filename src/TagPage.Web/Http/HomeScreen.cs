using System.Text.Json;
using TagPage.Records.Shop;

namespace TagPage.Web.Http;

/// <summary>
/// What a phone needs to put the shop area or a client's own page on its home screen: a manifest each, as the W3C's Web
/// Application Manifest has it. Nothing else depends on it.
/// </summary>
internal static class HomeScreen
{
    public const string OfShop = "/shop.webmanifest";
    public const string OfOwnPage = "/my.webmanifest";

    private const string Green = "#1E5B49";
    private const string Paper = "#FBFAF6";

    private static readonly object[] Icons =
    [
        new { src = "/icons/any-192.png", sizes = "192x192", type = "image/png" },
        new { src = "/icons/any-512.png", sizes = "512x512", type = "image/png" },
        new { src = "/icons/full-512.png", sizes = "512x512", type = "image/png", purpose = "maskable" },
    ];

    public static void MapHomeScreen(this WebApplication app)
    {
        app.MapGet(OfShop, (ShopStore shops, HttpContext context) => Manifest(context, "/shop", shops.Get().Name, "Bench")).AllowAnonymous();
        app.MapGet(OfOwnPage, (ShopStore shops, HttpContext context) => Manifest(context, "/my", shops.Get().Name, shops.Get().Name)).AllowAnonymous();
    }

    // Signing in leads out of /shop and a scanned tag out of /my, and both belong to the same window.
    private static IResult Manifest(HttpContext context, string start, string shop, string shortName)
    {
        context.Response.Headers.CacheControl = "no-cache";
        var manifest = new
        {
            id = start,
            start_url = start,
            scope = "/",
            name = Named(shop),
            short_name = Named(shortName),
            display = "standalone",
            background_color = Paper,
            theme_color = Green,
            icons = Icons,
        };
        return Results.Text(JsonSerializer.Serialize(manifest), "application/manifest+json");
    }

    private static string Named(string name) => name.Length > 0 ? name : "TagPage";
}
