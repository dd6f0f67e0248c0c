using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
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
        app.UseWhen(IsSafeToCompress, pages => pages.UseResponseCompression());
        app.UseExceptionHandler(Problems.Options);
        app.UseStatusCodePagesWithReExecute("/problem/{0}");
        app.UseMiddleware<OwnTag>();
        app.UseMiddleware<TagCache>();
        app.UseMiddleware<PlainHttpGuard>();
        app.UseRouting();
        app.Use(AnswerWhereNothingIs);
        app.UseAuthentication();
        app.UseAuthorization();
        app.MapHealth();
        app.MapSecurityText();
        app.MapAccentSheet();
        app.MapHomeScreen();
        app.MapDeskLine();
        app.MapStaticAssets().AllowAnonymous();
        app.MapRazorPages().WithStaticAssets();
    }

    /// <summary>
    /// Looks at the pages of finders and reminders: they hold nothing that came with the request, so that the size of the
    /// answer tells nothing. Answers to a press and refused forms repeat what was typed.
    /// </summary>
    private static bool IsSafeToCompress(HttpContext context)
    {
        var request = context.Request;
        return (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method)) && !request.Query.ContainsKey(AnsweredForm.Again)
            && (request.Path.StartsWithSegments("/n") || (request.Path.StartsWithSegments("/t", out var code) && code.Value!.EndsWith("/found", StringComparison.OrdinalIgnoreCase)));
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
