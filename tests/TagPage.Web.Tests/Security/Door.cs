using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Mvc.RazorPages.Infrastructure;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.StaticAssets;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>One address pattern of the program and who may use it, as doors.txt beside this file lists them.</summary>
public sealed record Door(string Route, string Who)
{
    public bool ForEverybody => Who == "everybody";

    public bool ForClients => Who == "client";

    /// <summary>Of the shop: for the owner at least.</summary>
    public bool ForShop => Who is "owner" or "bench";

    /// <summary>For helpers, too.</summary>
    public bool ForBench => Who == "bench";

    /// <summary>doors.txt: a route, blanks, and "everybody", "owner", "bench" or "client". A line for each door, no door without a line.</summary>
    public static IReadOnlyList<Door> Listed { get; } =
        [.. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Security", "doors.txt"))
            .Where(l => l.Length > 0 && !l.StartsWith('#'))
            .Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Select(words => new Door(words[0], words[1]))];

    /// <summary>How an unpublished build finds static files that are newer than itself; a published one has no such door.</summary>
    private const string NewFiles = "/{**path:file}";

    /// <summary>The routes the program really answers. Static files count as one door a folder.</summary>
    /// <remarks>A named handler of a page is an endpoint of its own.</remarks>
    public static async Task<IReadOnlyList<string>> Built(TestShop shop)
    {
        var routes = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var endpoint in shop.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>())
        {
            routes.Add(RouteOf(endpoint));
            if (endpoint.Metadata.GetMetadata<PageActionDescriptor>() is { } page)
                foreach (var handler in (await shop.Get<PageLoader>().LoadAsync(page, endpoint.Metadata)).HandlerMethods.Where(h => h.Name is not null))
                    routes.Add($"{RouteOf(endpoint)}?handler={handler.Name!.ToLowerInvariant()}");
        }
        return [.. routes.Where(r => r != NewFiles)];
    }

    private static string RouteOf(RouteEndpoint endpoint)
    {
        var route = "/" + endpoint.RoutePattern.RawText!.Trim('/').ToLowerInvariant();
        return endpoint.Metadata.GetMetadata<StaticAssetDescriptor>() is null ? route : route[..(route.LastIndexOf('/') + 1)] + "*";
    }

    /// <summary>An address behind the door: things that are there where the cast has one, else things that are not.</summary>
    public string Address(string tagCode) => Route
        .Replace("{id:long}", "1", StringComparison.Ordinal)
        .Replace("{whose}", "client", StringComparison.Ordinal)
        .Replace("{racket:long}", "1", StringComparison.Ordinal)
        .Replace("{player:long}", "1", StringComparison.Ordinal)
        .Replace("{job:long}", "1", StringComparison.Ordinal)
        .Replace("{technician:long}", "1", StringComparison.Ordinal)
        .Replace("{number:int}", "1", StringComparison.Ordinal)
        .Replace("{code:int}", "404", StringComparison.Ordinal)
        .Replace("{format:regex(^(svg|png)$)}", "svg", StringComparison.Ordinal)
        .Replace("{code}", tagCode, StringComparison.Ordinal)
        .Replace("/css/*", "/css/shop.css", StringComparison.Ordinal)
        .Replace("/js/*", "/js/shop.js", StringComparison.Ordinal)
        .Replace("/icons/*", "/icons/tagpage.svg", StringComparison.Ordinal)
        .Replace("/{name?}", "", StringComparison.Ordinal)
        .Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal);
}
