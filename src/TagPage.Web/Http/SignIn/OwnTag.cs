using Microsoft.AspNetCore.Authentication;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Limits;
using TagPage.Web.Words;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// Leads a client who opens the tag of a racket of their own to that racket in their own page. Everybody else goes on to
/// the public page and what is kept of it; the shop has its own way to the racket there.
/// </summary>
public sealed class OwnTag(RequestDelegate next, CodeGuard guard, OwnPageRacketStore rackets, CookieRules cookies)
{
    public async Task InvokeAsync(HttpContext context)
    {
        if (await Racket(context) is { } racket)
            context.Response.Redirect(PageLanguage.Of(context).Link($"/my/rackets/{racket}"));
        else
            await next(context);
    }

    private async Task<long?> Racket(HttpContext context)
    {
        if (!cookies.IsSent(context.Request, CookieRules.OwnPage) || cookies.IsSent(context.Request, CookieRules.Shop) || TagCache.Typed(context.Request) is not { } typed)
            return null;
        if (guard.Ask(context, typed).Reading.Code is not { } code)
            return null;
        var session = await context.AuthenticateAsync(OwnPageCookie.SchemeName);
        return session.Principal is { } client ? rackets.OfTag(client.ClientId(), code) : null;
    }
}
