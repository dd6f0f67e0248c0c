namespace TagPage.Web.Http.Limits;

/// <summary>
/// Refuses what another web page makes a visitor's browser load from behind a tag's code, as a picture or a frame, say:
/// nobody is scanning, so it must not use up anybody's tries. Links are let through. The browser itself tells them apart
/// (W3C Fetch Metadata, sections 2.1 and 2.4); over plain http it says nothing.
/// </summary>
public sealed class CrossSite(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context)
    {
        var request = context.Request;
        if (!request.Path.StartsWithSegments("/t") || request.Headers["Sec-Fetch-Site"] != "cross-site" || request.Headers["Sec-Fetch-Dest"] == "document")
            return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }
}
