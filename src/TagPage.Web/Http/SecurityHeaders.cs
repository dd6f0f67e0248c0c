namespace TagPage.Web.Http;

/// <summary>The headers every response carries, errors included.</summary>
public sealed class SecurityHeaders(RequestDelegate next)
{
    private const string SignedInPolicy =
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; connect-src 'self'; manifest-src 'self'; "
        + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /// <summary>Set in the request's items by the one page that listens; everywhere else the microphone is off.</summary>
    public static readonly object Microphone = new();

    /// <summary>The same for the one page that reads tags with the camera, whose reader is WebAssembly of our own files.</summary>
    public static readonly object Camera = new();

    /// <summary>The same for an answer that is a picture out of somebody's file: it may do nothing at all.</summary>
    public static readonly object Picture = new();

    private const string PicturePolicy = "default-src 'none'; sandbox; frame-ancestors 'none'";

    public Task InvokeAsync(HttpContext context)
    {
        // Set as the response starts, because the error handler clears what was set before.
        context.Response.OnStarting(() =>
        {
            Write(context);
            return Task.CompletedTask;
        });
        return next(context);
    }

    private static void Write(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = context.Items[typeof(PublicStyle)] is PublicSheet sheet ? sheet.Policy
            : context.Items.ContainsKey(Picture) ? PicturePolicy
            : context.Items.ContainsKey(Camera) ? SignedInPolicy.Replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'", StringComparison.Ordinal)
            : SignedInPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = $"camera=({For(Camera)}), geolocation=(), microphone=({For(Microphone)}), payment=(), usb=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.XFrameOptions = "DENY";
        if (context.Request.IsHttps)
            headers.StrictTransportSecurity = "max-age=31536000";
        if (!headers.ContainsKey("Cache-Control"))
            headers.CacheControl = "no-store";

        string For(object sense) => context.Items.ContainsKey(sense) ? "self" : "";
    }
}
