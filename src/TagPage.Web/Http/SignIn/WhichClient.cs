using System.Security.Claims;

namespace TagPage.Web.Http.SignIn;

/// <summary>What the own page's session says about the visitor; nothing for everybody else.</summary>
public static class WhichClient
{
    internal const string ClientClaim = "client";

    internal const string SessionClaim = "corner-session";

    public static bool IsClient(this ClaimsPrincipal who) => who.HasClaim(c => c.Type == ClientClaim);

    public static long ClientId(this ClaimsPrincipal who) => long.Parse(who.FindFirstValue(ClientClaim)!, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The hash that the session is kept under.</summary>
    public static string OwnPageSession(this ClaimsPrincipal who) => who.FindFirstValue(SessionClaim)!;
}
