using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using TagPage.Records.Audit;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Http.Forms;

/// <summary>Writes down that settings were saved, by the page: a form that is taken leads on, a refused one does not.</summary>
internal sealed class SettingNote : IAsyncPageFilter
{
    private static readonly string[] Others = ["/Shop/Backups/Settings", "/Shop/Backups/Passphrase", "/Shop/Money/Prices", "/Shop/Labels/Settings", "/Shop/People/Index"];

    public Task OnPageHandlerSelectionAsync(PageHandlerSelectedContext context) => Task.CompletedTask;

    public async Task OnPageHandlerExecutionAsync(PageHandlerExecutingContext context, PageHandlerExecutionDelegate next)
    {
        var done = await next();
        var (http, page) = (context.HttpContext, context.ActionDescriptor.ViewEnginePath);
        if (done.Result is RedirectResult && HttpMethods.IsPost(http.Request.Method) && IsSetting(page))
            http.RequestServices.GetRequiredService<SecurityLog>().Note(http, AuditEvent.SettingChanged, http.User.AccountId(), page["/Shop/".Length..]);
    }

    private static bool IsSetting(string page) => page.StartsWith("/Shop/Settings/", StringComparison.Ordinal) || Others.Contains(page);
}
