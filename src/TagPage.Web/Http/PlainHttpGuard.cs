using System.Net;

namespace TagPage.Web.Http;

/// <summary>
/// Keeps passwords and records off unencrypted networks: over plain http the signed-in areas answer on this machine
/// only, and not even there once the shop's address is https.
/// </summary>
public sealed class PlainHttpGuard(RequestDelegate next, CookieRules cookies)
{
    private static readonly PathString[] Private = ["/shop", "/account", "/my", "/desk"];

    public Task InvokeAsync(HttpContext context)
    {
        if (context.Request.IsHttps || !Private.Any(p => context.Request.Path.StartsWithSegments(p)) || IsAtHome(context))
            return next(context);
        context.Items[typeof(PlainHttpGuard)] = true;
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }

    /// <summary>True where this guard, and not a missing permission, is behind the 403.</summary>
    public static bool Stopped(HttpContext context) => context.Items.ContainsKey(typeof(PlainHttpGuard));

    private bool IsAtHome(HttpContext context) =>
        !cookies.AlwaysSecure
        && context.Connection.RemoteIpAddress is { } remote && IPAddress.IsLoopback(remote)
        && IsLoopbackName(context.Request.Host.Host);

    private static bool IsLoopbackName(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));
}
