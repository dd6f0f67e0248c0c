using System.Text;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.Net.Http.Headers;

namespace TagPage.Web.Http;

/// <summary>
/// Answers 400 to a form that is damaged or not written as browsers write it, before anything else fails on it.
/// </summary>
internal sealed class ReadableForm : IAsyncAuthorizationFilter, IOrderedFilter
{
    /// <summary>After its size is known to fit, before antiforgery at 1000.</summary>
    public int Order => 950;

    /// <summary>True where this filter, and not a token that is too old, is behind the 400.</summary>
    public static bool Stopped(HttpContext http) => http.Items.ContainsKey(typeof(ReadableForm));

    public async Task OnAuthorizationAsync(AuthorizationFilterContext context)
    {
        var http = context.HttpContext;
        if (!http.Request.HasFormContentType)
            return;
        // The page that says what is wrong must not fail on the same form.
        if (IsShowingProblem(http))
            http.Features.Set<IFormFeature>(new FormFeature(FormCollection.Empty));
        else if (!IsUtf8(http.Request) || !await CanBeRead(http.Request))
            Refuse(context);
    }

    private static bool IsShowingProblem(HttpContext http) =>
        http.Features.Get<IStatusCodeReExecuteFeature>() is not null || http.Features.Get<IExceptionHandlerFeature>() is not null;

    private static void Refuse(AuthorizationFilterContext context)
    {
        context.HttpContext.Items[typeof(ReadableForm)] = true;
        context.Result = new StatusCodeResult(StatusCodes.Status400BadRequest);
    }

    private static bool IsUtf8(HttpRequest request) =>
        request.GetTypedHeaders().ContentType?.Charset is not { Length: > 0 } named
        || HeaderUtilities.RemoveQuotes(named).Equals(Encoding.UTF8.WebName, StringComparison.OrdinalIgnoreCase);

    private static async Task<bool> CanBeRead(HttpRequest request)
    {
        try
        {
            await request.ReadFormAsync(request.HttpContext.RequestAborted);
            return true;
        }
        // A part of a form may name an encoding of its own; the last two are about that.
        catch (Exception broken) when (broken is not BadHttpRequestException and (IOException or InvalidDataException or ArgumentException or NotSupportedException))
        {
            return false;
        }
    }
}
