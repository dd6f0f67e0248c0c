using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using TagPage.Web.Csv;

namespace TagPage.Web.Pages.Shop.Import;

/// <summary>Lets a full set of files through and answers 413 to more, before a byte of it is read.</summary>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class UploadLimitAttribute : Attribute, IAuthorizationFilter, IOrderedFilter
{
    private static readonly long MostBytes = (long)ImportSheets.All.Count * SheetText.MostBytes + 1_000_000;

    /// <summary>Before the antiforgery filter, which reads the form.</summary>
    public int Order => 500;

    public void OnAuthorization(AuthorizationFilterContext context)
    {
        var http = context.HttpContext;
        if (http.Request.ContentLength > MostBytes)
        {
            context.Result = new StatusCodeResult(StatusCodes.Status413PayloadTooLarge);
            return;
        }
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = MostBytes;
        http.Features.Set<IFormFeature>(new FormFeature(http.Request, new FormOptions { MultipartBodyLengthLimit = MostBytes }));
    }
}
