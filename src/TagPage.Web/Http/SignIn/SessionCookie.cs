using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>Accepts a sign-in cookie only as long as the server knows its session, and sends strangers to the sign-in page.</summary>
public sealed class SessionCookie(SessionStore sessions) : CookieAuthenticationEvents
{
    public override async Task ValidatePrincipal(CookieValidatePrincipalContext context)
    {
        if (context.Principal is { } who && sessions.IsLive(who.SessionId(), who.AccountId(), who.SecurityStamp()))
            return;
        context.RejectPrincipal();
        await context.HttpContext.SignOutAsync(context.Scheme.Name);
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
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }
}
