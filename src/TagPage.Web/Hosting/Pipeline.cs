using TagPage.Web.Pages.Tag;

namespace TagPage.Web.Hosting;

internal static class Pipeline
{
    /// <summary>The way of a request, outermost first.</summary>
    public static void UseTagPage(this WebApplication app)
    {
        app.UseForwardedHeaders();
        app.UseMiddleware<SecurityHeaders>();
        app.UseExceptionHandler(Problems.Options);
        app.UseStatusCodePagesWithReExecute("/problem/{0}");
        app.UseMiddleware<PlainHttpGuard>();
        app.UseRouting();
        app.UseAuthentication();
        app.UseMiddleware<TagCache>();
        app.UseAuthorization();
        app.MapHealth();
        app.MapSecurityText();
        app.MapAccentSheet();
        app.MapStaticAssets().AllowAnonymous();
        app.MapRazorPages().WithStaticAssets();
    }
}
