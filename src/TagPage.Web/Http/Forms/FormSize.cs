using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Mvc.Filters;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// Answers 413 to a form larger than the server or its page takes. Antiforgery would fail first and tell the
/// sender to reload the page.
/// </summary>
internal sealed class FormSize : IAuthorizationFilter, IOrderedFilter
{
    /// <summary>Before antiforgery at 1000, after a page that sets a limit of its own.</summary>
    public int Order => 900;

    public void OnAuthorization(AuthorizationFilterContext context)
    {
        var http = context.HttpContext;
        var isShowingProblem = http.Features.Get<IStatusCodeReExecuteFeature>() is not null;
        if (!isShowingProblem && http.Request.ContentLength > http.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize)
            context.Result = new TooLargeResult();
    }
}
