using System.Security.Claims;

namespace TagPage.Web.Http.SignIn;

/// <summary>What the sign-in cookie says about its bearer; empty where it says nothing.</summary>
public static class WhoIsSignedIn
{
    public const string SessionClaim = "session";

    public const string StampClaim = "stamp";

    public static string AccountId(this ClaimsPrincipal who) => who.FindFirstValue(ClaimTypes.NameIdentifier) ?? "";

    public static string SessionId(this ClaimsPrincipal who) => who.FindFirstValue(SessionClaim) ?? "";

    public static string SecurityStamp(this ClaimsPrincipal who) => who.FindFirstValue(StampClaim) ?? "";

    public static bool IsSignedIn(this ClaimsPrincipal who) => who.Identity?.IsAuthenticated == true;
}
