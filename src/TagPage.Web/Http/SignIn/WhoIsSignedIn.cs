using System.Security.Claims;
using TagPage.Records.Accounts;
using TagPage.Records.Storage;

namespace TagPage.Web.Http.SignIn;

/// <summary>What the sign-in cookie says about its bearer; empty where it says nothing.</summary>
public static class WhoIsSignedIn
{
    public const string SessionClaim = "session";

    public const string StampClaim = "stamp";

    public static string AccountId(this ClaimsPrincipal who) => who.FindFirstValue(ClaimTypes.NameIdentifier) ?? "";

    public static string SessionId(this ClaimsPrincipal who) => who.FindFirstValue(SessionClaim) ?? "";

    public static string SecurityStamp(this ClaimsPrincipal who) => who.FindFirstValue(StampClaim) ?? "";

    /// <summary>On a claim of whom the owner wants to sign in with more than a password, and who has not.</summary>
    public const string OwesClaim = "owes-second-step";

    public static bool OwesSecondStep(this ClaimsPrincipal who) => who.HasClaim(claim => claim.Type == OwesClaim);

    public const string PinClaim = "by-pin";

    /// <summary>Changed over on a shared tablet, so to the bench alone.</summary>
    public static bool IsByPin(this ClaimsPrincipal who) => who.HasClaim(claim => claim.Type == PinClaim);

    public static bool IsOwner(this ClaimsPrincipal who) => who.IsInRole(Roles.Owner);

    /// <summary>Who acts, for the records: the owner, a helper at the bench, or nobody they know.</summary>
    public static Who AtShop(this ClaimsPrincipal who) =>
        who.IsOwner() ? Who.Owner(who.Account()) : who.IsInRole(Roles.Bench) ? Who.Bench(who.Account()) : Who.Finder;

    private static string? Account(this ClaimsPrincipal who) => who.FindFirstValue(ClaimTypes.NameIdentifier);

    public static bool IsSignedIn(this ClaimsPrincipal who) => who.Identity?.IsAuthenticated == true;
}
