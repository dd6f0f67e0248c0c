using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace TagPage.Web.Tests.Cast;

/// <summary>A port of this machine, with somebody who answers there.</summary>
internal sealed class LoopbackDoor : IAsyncDisposable
{
    private readonly WebApplication _app;
    private int _calls;

    private LoopbackDoor(WebApplication app) => _app = app;

    /// <summary>Without a trailing slash.</summary>
    public string Address => _app.Urls.Single();

    public int Calls => _calls;

    public static async Task<LoopbackDoor> Open(RequestDelegate answer)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var door = new LoopbackDoor(builder.Build());
        door._app.Run(context =>
        {
            Interlocked.Increment(ref door._calls);
            return answer(context);
        });
        await door._app.StartAsync();
        return door;
    }

    /// <summary>One that leads into the shop, as a proxy does.</summary>
    public static Task<LoopbackDoor> Into(TestShop shop) => Open(async context =>
    {
        var answer = await shop.Stranger().Get(context.Request.Path + context.Request.QueryString.ToString());
        context.Response.StatusCode = (int)answer.StatusCode;
        await context.Response.WriteAsync(await answer.Content.ReadAsStringAsync());
    });

    public async ValueTask DisposeAsync() => await _app.DisposeAsync();
}
