using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Mvc.Filters;

namespace TagPage.Web.Http.Forms;

/// <summary>Lets a page that takes files have more than other forms, and answers 413 past that, and keeps not a byte of it.</summary>
/// <param name="mostBytes">More than the page takes, so that what is a little too large is answered beside its field.</param>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class UploadLimitAttribute(long mostBytes) : Attribute, IAuthorizationFilter, IOrderedFilter
{
    /// <summary>Before the filters that look at the size of a form and read it.</summary>
    public int Order => 500;

    public void OnAuthorization(AuthorizationFilterContext context)
    {
        var http = context.HttpContext;
        if (http.Request.ContentLength > mostBytes)
        {
            context.Result = new TooLargeResult();
            return;
        }
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = mostBytes;
        http.Features.Set<IFormFeature>(new FormFeature(http.Request, new FormOptions { MultipartBodyLengthLimit = mostBytes }));
    }
}
