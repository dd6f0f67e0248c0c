using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Mvc;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// Answers 413 once the sender is done. Browsers and Apache as a proxy send everything before they look for an answer; to them a
/// server that answers earlier and hangs up is a broken connection.
/// </summary>
internal sealed class TooLargeResult() : StatusCodeResult(StatusCodes.Status413PayloadTooLarge)
{
    /// <summary>Bytes; who sends more is hung up on.</summary>
    private const long MostThrownAway = 64_000_000;

    public override async Task ExecuteResultAsync(ActionContext context)
    {
        if (context.HttpContext.Request.ContentLength <= MostThrownAway)
            await ThrowAway(context.HttpContext);
        await base.ExecuteResultAsync(context);
    }

    private static async Task ThrowAway(HttpContext http)
    {
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = MostThrownAway;
        await http.Request.BodyReader.CopyToAsync(Stream.Null, http.RequestAborted);
    }
}
