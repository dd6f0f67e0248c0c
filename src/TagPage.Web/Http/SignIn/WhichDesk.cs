using System.Globalization;
using System.Security.Claims;
using TagPage.Records.Storage;

namespace TagPage.Web.Http.SignIn;

/// <summary>Who works at a desk. Asked only behind <see cref="DeskCookie.Policy"/>, which lets in the shop and helpers.</summary>
public static class WhichDesk
{
    internal const string EventClaim = "event";

    internal const string SessionClaim = "event-session";

    public static bool IsHelper(this ClaimsPrincipal who) => who.HasClaim(claim => claim.Type == EventClaim);

    public static Who AtDesk(this ClaimsPrincipal who) =>
        who.FindFirstValue(EventClaim) is { } desk ? Who.Helper(long.Parse(desk, CultureInfo.InvariantCulture)) : who.AtShop();
}
