using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;

namespace TagPage.Web.Http;

/// <summary>A page shows itself to a POST, PUT or DELETE it has no handler for; this answers 405 instead.</summary>
internal sealed class KnownVerbs : IPageFilter
{
    public void OnPageHandlerSelected(PageHandlerSelectedContext context)
    {
    }

    public void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        var method = context.HttpContext.Request.Method;
        if (context.HandlerMethod is not null || HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || context.ActionDescriptor.ViewEnginePath == "/Problem")
            return;
        var verbs = context.ActionDescriptor.HandlerMethods.Select(h => h.HttpMethod.ToUpperInvariant()).Append("GET").Append("HEAD").Distinct();
        context.HttpContext.Response.Headers.Allow = string.Join(", ", verbs);
        context.Result = new StatusCodeResult(StatusCodes.Status405MethodNotAllowed);
    }

    public void OnPageHandlerExecuted(PageHandlerExecutedContext context)
    {
    }
}
