namespace TagPage.Web.Hosting;

internal static class Pipeline
{
    /// <summary>The way of a request, outermost first.</summary>
    public static void UseTagPage(this WebApplication app)
    {
        app.UseForwardedHeaders();
        app.UseMiddleware<SecurityHeaders>();
        app.UseExceptionHandler("/problem/500");
        app.UseStatusCodePagesWithReExecute("/problem/{0}");
        app.UseRouting();
        app.UseAuthentication();
        app.UseAuthorization();
        app.MapHealth();
        app.MapStaticAssets().AllowAnonymous();
        app.MapRazorPages().WithStaticAssets();
    }
}
