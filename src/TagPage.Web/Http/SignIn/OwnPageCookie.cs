using System.Globalization;
using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;
using TagPage.Records.OwnPages;
using TagPage.Web.Words;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// Knows a client's browser by its cookie, a random number whose hash names the session. It is a scheme of its own: the
/// shop's sign-in grants nothing here, and this grants nothing in the shop area.
/// </summary>
public sealed class OwnPageCookie(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder, OwnPageSessionStore sessions, CookieRules cookies)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    public const string SchemeName = "OwnPage";

    /// <summary>The policy of every page below /my except those that lead in.</summary>
    public const string Policy = "Client";

    protected override Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (!Request.Cookies.TryGetValue(cookies.Name(CookieRules.OwnPage), out var secret) || sessions.Find(secret) is not { } session)
            return Task.FromResult(AuthenticateResult.NoResult());
        var id = session.ClientId.ToString(CultureInfo.InvariantCulture);
        var identity = new ClaimsIdentity(
        [
            new(ClaimTypes.NameIdentifier, "client " + id), new(WhichClient.ClientClaim, id), new(WhichClient.SessionClaim, session.IdHash),
        ], SchemeName);
        return Task.FromResult(AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(identity), SchemeName)));
    }

    /// <summary>By path alone, as the shop's sign-in does it.</summary>
    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        Response.Redirect(PageLanguage.Of(Context).Link("/my/link"));
        return Task.CompletedTask;
    }

    public static void Give(HttpContext context, CookieRules cookies, string secret) =>
        cookies.Give(context, CookieRules.OwnPage, secret, OwnPageSessionStore.Longest);
}
