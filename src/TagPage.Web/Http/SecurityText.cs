using System.Globalization;
using TagPage.Records.Shop;

namespace TagPage.Web.Http;

/// <summary>Whom to contact about a vulnerability (RFC 9116). Generated on each request, so that it never expires.</summary>
internal static class SecurityText
{
    private static readonly TimeSpan GoodFor = TimeSpan.FromDays(180);

    public static void MapSecurityText(this WebApplication app) =>
        app.MapGet("/.well-known/security.txt", (ShopStore shops, PublicAddress address, TimeProvider clock) =>
            Contact(shops.Get(), address) is { } contact
                ? Results.Text(Text(contact, address, clock.GetUtcNow() + GoodFor), "text/plain; charset=utf-8")
                : Results.NotFound())
            .AllowAnonymous();

    /// <summary>A web address would have to be https, so a shop tried over http without email or phone has no contact to give.</summary>
    private static string? Contact(ShopDetails shop, PublicAddress address) =>
        shop.Mail is { } mail ? "mailto:" + Uri.EscapeDataString(mail).Replace("%40", "@", StringComparison.Ordinal)
        : shop.Phone is { } phone ? "tel:" + phone
        : address.IsHttps ? address.Of("/")
        : null;

    private static string Text(string contact, PublicAddress address, DateTimeOffset expires)
    {
        var canonical = address.IsHttps ? $"Canonical: {address.Of("/.well-known/security.txt")}\n" : "";
        var until = expires.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);
        return $"Contact: {contact}\nExpires: {until}\nPreferred-Languages: en\n{canonical}";
    }
}
