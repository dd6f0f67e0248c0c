using TagPage.Records.Events;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Start;

internal static class DeskLine
{
    /// <summary>Server-sent events for whoever works at a desk. They end with the program, so that it need not wait for tablets.</summary>
    public static void MapDeskLine(this WebApplication app) => app.Map("/desk/{id:long}/live", Answer).RequireAuthorization(DeskCookie.Policy);

    // Every verb comes here, so that a stranger is turned away before being told which ones there are.
    private static IResult Answer(long id, HttpContext context, EventStore events, LiveDesks desks, IHostApplicationLifetime life)
    {
        if (events.Get(context.User.AtDesk(), id) is null)
            return TypedResults.NotFound();
        if (HttpMethods.IsHead(context.Request.Method))
            return TypedResults.Ok();
        if (!HttpMethods.IsGet(context.Request.Method))
            return TypedResults.StatusCode(StatusCodes.Status405MethodNotAllowed);
        var gone = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, life.ApplicationStopping);
        context.Response.RegisterForDispose(gone);
        // A proxy that gathers answers would keep every tablet waiting.
        context.Response.Headers["X-Accel-Buffering"] = "no";
        return TypedResults.ServerSentEvents(desks.Of(id, gone.Token));
    }
}
