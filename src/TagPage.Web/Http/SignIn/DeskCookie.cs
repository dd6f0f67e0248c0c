using System.Globalization;
using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;
using TagPage.Records.Events;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// Who works at an event's desk: the shop by its own sign-in, or a helper's tablet by a cookie of its own, a random number
/// whose hash names the session. The tablet's grants nothing anywhere else.
/// </summary>
public sealed class DeskCookie(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder, EventSessionStore sessions, CookieRules cookies)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    public const string SchemeName = "Desk";

    /// <summary>The policy of every page below /desk except the one that leads in.</summary>
    public const string Policy = "Desk";

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        var shop = await Context.AuthenticateAsync();
        if (shop.Succeeded)
            return shop;
        if (sessions.Find(Secret(Context, cookies)) is not { } session)
            return AuthenticateResult.NoResult();
        var identity = new ClaimsIdentity(
        [
            new(ClaimTypes.NameIdentifier, "helper"), new(WhichDesk.EventClaim, session.EventId.ToString(CultureInfo.InvariantCulture)), new(WhichDesk.SessionClaim, session.IdHash),
        ], SchemeName);
        return AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(identity), SchemeName));
    }

    /// <summary>As the shop's sign-in does it: the owner signs in, a helper scans the square again.</summary>
    protected override Task HandleChallengeAsync(AuthenticationProperties properties) => Context.ChallengeAsync();

    protected override Task HandleForbiddenAsync(AuthenticationProperties properties) => Context.ForbidAsync();

    public static string? Secret(HttpContext context, CookieRules cookies) =>
        cookies.IsSent(context.Request, CookieRules.Desk) ? context.Request.Cookies[cookies.Name(CookieRules.Desk)] : null;

    public static void Give(HttpContext context, CookieRules cookies, string secret) =>
        cookies.Give(context, CookieRules.Desk, secret, TimeSpan.FromDays(EventEntry.MostDays));
}
