using System.Collections.Concurrent;
using System.IO.Compression;
using System.Security.Cryptography;
using Microsoft.AspNetCore.WebUtilities;
using TagPage.Core.Tags;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Limits;
using TagPage.Web.Words;

namespace TagPage.Web.Http;

/// <summary>
/// Keeps the pages of live tags as they were sent, compressed where the browser takes gzip: Brotli would save a hundredth
/// and take twice as long. A kept page is good until something of its player's or of the shop's is written, until the
/// shop's midnight, and for an hour at most. The shop always gets a fresh page, and browsers ask again every time.
/// Compressing is safe here: the page holds no secret and nothing of what the visitor sent.
/// </summary>
/// <remarks>Stands before routing and sign-in: a kept page needs neither.</remarks>
public sealed class TagCache(RequestDelegate next, Database database, ShopClock clock, CodeGuard guard, CookieRules cookies)
{
    private const int MostBytesOfAll = 16 * 1024 * 1024;
    private const int MostBytes = 64 * 1024;
    private const string Gzip = "gzip";

    private static readonly TimeSpan MostAge = TimeSpan.FromHours(1);

    private readonly ConcurrentDictionary<Key, Kept> _pages = new();
    private long _bytes;

    private sealed record Key(TagCode Code, bool IsPacked, string Language, bool IsChosen);

    // The player whose racket it shows, and the mark of the changes that went into it.
    private sealed record Kept(byte[] Body, string Tag, object? Style, long Player, long Mark, DateTimeOffset From, DateTimeOffset Until);

    public async Task InvokeAsync(HttpContext context)
    {
        if (KeyOf(context) is not { } key)
        {
            await next(context);
            return;
        }
        var now = clock.Now;
        if (_pages.TryGetValue(key, out var kept) && now >= kept.From && now < kept.Until && database.Changes.IsFresh(kept.Player, kept.Mark))
        {
            guard.Right(context, key.Code);
        }
        else
        {
            kept = await Render(context, key.IsPacked, now);
            if (kept is null)
                return;
            Keep(key, kept);
        }
        await Send(context, key.IsPacked, kept);
    }

    /// <summary>Null unless a stranger is looking at a tag's page, and for a refused source.</summary>
    private Key? KeyOf(HttpContext context)
    {
        if (Typed(context.Request) is not { } typed || cookies.IsSent(context.Request, CookieRules.Shop))
            return null;
        var asked = guard.Ask(context, typed);
        if (asked.Reading.Code is not { } code || asked.Wait > TimeSpan.Zero)
            return null;
        var spoken = PageLanguage.Of(context);
        return new Key(code, TakesGzip(context.Request), spoken.Language.Code, spoken.IsChosen);
    }

    /// <summary>The code in the address of somebody who looks at a tag's page, as it stands there; null for every other request.</summary>
    internal static string? Typed(HttpRequest request) =>
        (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method))
        && request.Path.StartsWithSegments("/t", out var rest) && rest.Value is { Length: > 1 } typed && typed.IndexOf('/', 1) < 0
            ? typed[1..]
            : null;

    private static bool TakesGzip(HttpRequest request) =>
        request.GetTypedHeaders().AcceptEncoding.Any(a => a.Quality != 0 && a.Value.Equals(Gzip, StringComparison.OrdinalIgnoreCase));

    private void Keep(Key key, Kept page)
    {
        if (page.Body.Length > MostBytes)
            return;
        if (Interlocked.Add(ref _bytes, page.Body.Length) > MostBytesOfAll)
        {
            _pages.Clear();
            Interlocked.Exchange(ref _bytes, page.Body.Length);
        }
        _pages[key] = page;
    }

    /// <summary>Lets the page be made. Null where it turned out not to be a live tag's; that answer is already sent.</summary>
    private async Task<Kept?> Render(HttpContext context, bool isPacked, DateTimeOffset from)
    {
        var mark = database.Changes.Now;
        var until = Earlier(from + MostAge, clock.Midnight);
        using var page = await Capture(context);
        if (context.Response.StatusCode != StatusCodes.Status200OK || context.Items[typeof(PlayerOfTag)] is not PlayerOfTag player)
        {
            await page.CopyToAsync(context.Response.Body);
            return null;
        }
        var plain = page.ToArray();
        var tag = $"\"{WebEncoders.Base64UrlEncode(SHA256.HashData(plain).AsSpan(0, 12))}{(isPacked ? Gzip : "")}\"";
        return new Kept(isPacked ? Pack(plain) : plain, tag, context.Items[typeof(PublicStyle)], player.Id, mark, from, until);
    }

    private async Task<MemoryStream> Capture(HttpContext context)
    {
        var sent = context.Response.Body;
        var page = new MemoryStream();
        context.Response.Body = page;
        try
        {
            await next(context);
        }
        finally
        {
            context.Response.Body = sent;
        }
        page.Position = 0;
        return page;
    }

    private static byte[] Pack(byte[] plain)
    {
        using var small = new MemoryStream();
        using (var packer = new GZipStream(small, CompressionLevel.Optimal))
            packer.Write(plain);
        return small.ToArray();
    }

    private static async Task Send(HttpContext context, bool isPacked, Kept kept)
    {
        var response = context.Response;
        context.Items[typeof(PublicStyle)] = kept.Style;
        response.Headers.CacheControl = "no-cache";
        response.Headers.Vary = "Accept-Encoding, Accept-Language";
        response.Headers.ETag = kept.Tag;
        if (Has(context.Request, kept.Tag))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            response.ContentType = null;
            return;
        }
        response.ContentType = "text/html; charset=utf-8";
        response.ContentLength = kept.Body.Length;
        if (isPacked)
            response.Headers.ContentEncoding = Gzip;
        if (!HttpMethods.IsHead(context.Request.Method))
            await response.Body.WriteAsync(kept.Body);
    }

    private static bool Has(HttpRequest request, string tag) =>
        request.Headers.IfNoneMatch.Count > 0
        && request.GetTypedHeaders().IfNoneMatch.Any(known => known.Tag == "*" || known.Tag == tag);

    private static DateTimeOffset Earlier(DateTimeOffset one, DateTimeOffset other) => one < other ? one : other;
}
