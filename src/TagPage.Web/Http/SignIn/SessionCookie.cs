using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>Accepts a sign-in cookie only as long as the server knows its session, and sends strangers to the sign-in page.</summary>
public sealed class SessionCookie(SessionStore sessions) : CookieAuthenticationEvents
{
    public override async Task ValidatePrincipal(CookieValidatePrincipalContext context)
    {
        if (context.Principal is { Identity: ClaimsIdentity identity } who && sessions.Live(who.SessionId(), who.AccountId(), who.SecurityStamp()) is { } signedIn)
        {
            SayNow(identity, signedIn);
            return;
        }
        context.RejectPrincipal();
        await context.HttpContext.SignOutAsync(context.Scheme.Name);
    }

    /// <summary>Name and role are those of this moment, not those that the cookie was written with.</summary>
    private static void SayNow(ClaimsIdentity identity, SignedIn signedIn)
    {
        Set(identity, identity.NameClaimType, signedIn.Name);
        Set(identity, identity.RoleClaimType, signedIn.Role);
        Set(identity, WhoIsSignedIn.PinClaim, signedIn.ByPin ? "yes" : null);
        Set(identity, WhoIsSignedIn.OwesClaim, signedIn.OwesSecondStep ? "yes" : null);
    }

    private static void Set(ClaimsIdentity identity, string type, string? value)
    {
        foreach (var claim in identity.FindAll(type).ToList())
            identity.RemoveClaim(claim);
        if (value is not null)
            identity.AddClaim(new Claim(type, value));
    }

    /// <summary>By path alone: the framework's own redirect would repeat whatever the Host header says.</summary>
    public override Task RedirectToLogin(RedirectContext<CookieAuthenticationOptions> context)
    {
        var request = context.Request;
        var back = HttpMethods.IsGet(request.Method) ? request.Path + request.QueryString : "/shop";
        context.Response.Redirect("/account/sign-in" + QueryString.Create("returnUrl", back));
        return Task.CompletedTask;
    }

    public override Task RedirectToAccessDenied(RedirectContext<CookieAuthenticationOptions> context)
    {
        if (context.HttpContext.User.OwesSecondStep())
            context.Response.Redirect("/account/second-step");
        else
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }
}
