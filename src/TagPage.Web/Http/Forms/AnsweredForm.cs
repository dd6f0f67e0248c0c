using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.WebUtilities;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// A form that is answered by a page, refused or only looked at, is answered by a redirect to that page. Going back there
/// later is then a look, and the browser does not ask whether to send the form again. Only the browser that sent it sees it,
/// signed in as it was. Pages that may show a secret once are not kept.
/// </summary>
internal sealed class AnsweredForm : IAsyncResourceFilter, IAsyncResultFilter
{
    /// <summary>The query's name for the page that was kept.</summary>
    public const string Again = "again";

    // A form without an address of its own goes to the page's.
    private const string Handler = "handler";

    // Recovery codes, invitations, private links, passphrases.
    private static readonly string[] Secret = ["/Account/", "/Shop/People/", "/Shop/OwnPages/", "/Shop/Backups/"];

    private static readonly object[] Items = [typeof(PublicStyle), SecurityHeaders.Microphone, SecurityHeaders.Camera];

    public async Task OnResourceExecutionAsync(ResourceExecutingContext context, ResourceExecutionDelegate next)
    {
        var http = context.HttpContext;
        if (HttpMethods.IsGet(http.Request.Method) && http.Request.Query[Again] is [{ } key] && Whose(http) is { } whose && Kept(http).Find(key, whose) is { } page)
            context.Result = Show(http, page);
        else
            await next();
    }

    private static FileContentResult Show(HttpContext http, KeptPages.Page page)
    {
        foreach (var (name, value) in page.Items)
            http.Items[name] = value;
        return new FileContentResult(page.Body, "text/html; charset=utf-8");
    }

    public async Task OnResultExecutionAsync(ResultExecutingContext context, ResultExecutionDelegate next)
    {
        var http = context.HttpContext;
        if (!HttpMethods.IsPost(http.Request.Method) || context.Result is not PageResult || MayShowSecrets(context) || Whose(http) is not { } whose)
        {
            await next();
            return;
        }
        using var page = await Capture(http.Response, next);
        if (http.Response.StatusCode == StatusCodes.Status200OK && Kept(http).Put(whose, page.ToArray(), ItemsOf(http)) is { } key)
            Lead(http, key);
        else
            await page.CopyToAsync(http.Response.Body);
    }

    private static bool MayShowSecrets(ResultExecutingContext context) =>
        context.ModelState.IsValid && context.ActionDescriptor is PageActionDescriptor page && Secret.Any(folder => page.ViewEnginePath.StartsWith(folder, StringComparison.Ordinal));

    private static async Task<MemoryStream> Capture(HttpResponse response, ResultExecutionDelegate next)
    {
        var sent = response.Body;
        var page = new MemoryStream();
        response.Body = page;
        try
        {
            await next();
        }
        finally
        {
            response.Body = sent;
        }
        page.Position = 0;
        return page;
    }

    private static void Lead(HttpContext http, string key)
    {
        var query = QueryString.Create(http.Request.Query.Where(q => q.Key is not Again && !q.Key.Equals(Handler, StringComparison.OrdinalIgnoreCase))).ToString();
        http.Response.StatusCode = StatusCodes.Status303SeeOther;
        http.Response.ContentType = null;
        http.Response.Headers.Location = QueryHelpers.AddQueryString(http.Request.Path.ToUriComponent() + query, Again, key);
    }

    private static List<KeyValuePair<object, object?>> ItemsOf(HttpContext http) =>
        [.. Items.Where(http.Items.ContainsKey).Select(name => KeyValuePair.Create(name, http.Items[name]))];

    private static KeptPages Kept(HttpContext http) => http.RequestServices.GetRequiredService<KeptPages>();

    /// <summary>The browser, who is signed in with it, and the page; null for a browser that sent no form of ours.</summary>
    private static string? Whose(HttpContext http)
    {
        var cookie = http.RequestServices.GetRequiredService<CookieRules>().Name(CookieRules.Form);
        return http.Request.Cookies[cookie] is { Length: > 0 } form
            ? string.Join('\n', form, http.User.SessionId(), http.User.FindFirst(WhichClient.SessionClaim)?.Value, http.User.FindFirst(WhichDesk.SessionClaim)?.Value, http.Request.Path)
            : null;
    }
}
