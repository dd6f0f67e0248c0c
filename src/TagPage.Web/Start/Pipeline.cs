using TagPage.Web.Http;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Start;

internal static class Pipeline
{
    /// <summary>The request pipeline, outermost first.</summary>
    public static void UseTagPage(this WebApplication app)
    {
        app.UseForwardedHeaders();
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<CrossSite>();
        app.UseExceptionHandler(Problems.Options);
        app.UseStatusCodePagesWithReExecute("/problem/{0}");
        app.UseMiddleware<PlainHttpGuard>();
        app.UseRouting();
        app.Use(AnswerWhereNothingIs);
        app.UseAuthentication();
        app.UseMiddleware<OwnTag>();
        app.UseMiddleware<TagCache>();
        app.UseAuthorization();
        app.MapHealth();
        app.MapSecurityText();
        app.MapAccentSheet();
        app.MapStaticAssets().AllowAnonymous();
        app.MapRazorPages().WithStaticAssets();
    }

    /// <summary>
    /// Where no page is there is nothing to guard: without this the fallback policy would send strangers to the sign-in
    /// page for every slip in an address, and for a wrong verb.
    /// </summary>
    private static Task AnswerWhereNothingIs(HttpContext context, RequestDelegate next)
    {
        var endpoint = context.GetEndpoint();
        if (endpoint is RouteEndpoint)
            return next(context);
        context.Response.StatusCode = StatusCodes.Status404NotFound;
        return endpoint?.RequestDelegate?.Invoke(context) ?? Task.CompletedTask;
    }
}
