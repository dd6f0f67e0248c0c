using System.Reflection;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Mvc.RazorPages.Infrastructure;
using Microsoft.AspNetCore.Routing;
using TagPage.Core.Tags;
using TagPage.Web.Start.Demo;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security.Hostile;

/// <summary>The demo shop with the owner at the bench, a client who typed a fresh code, and a stranger; and all its pages.</summary>
public sealed class House : IAsyncLifetime
{
    public TestShop Shop { get; } = new();

    public Visitor Owner { get; private set; } = null!;

    public Visitor Client { get; private set; } = null!;

    public Visitor Stranger { get; private set; } = null!;

    public IReadOnlyList<HousePage> Pages { get; private set; } = [];

    private readonly Dictionary<Visitor, string> _tokens = [];

    private TagCode _tag;

    public async ValueTask InitializeAsync()
    {
        Shop.Get<DemoShop>().Prepare();
        _tag = Shop.Get<DemoShop>().Lost!.Value;
        Shop.Records.Change("UPDATE client SET mail = 'odalys@ferran.example' WHERE id = 1");
        (Owner, Stranger) = (Shop.Owner(), Shop.Stranger());
        Client = await Shop.OnOwnPage(1);
        await Client.ProvesToBe(Shop);
        Pages = await FindPages();
    }

    public ValueTask DisposeAsync() => Shop.DisposeAsync();

    public Visitor For(HousePage page) => page.Door.ForShop ? Owner : page.Door.ForClients ? Client : Stranger;

    private async Task<IReadOnlyList<HousePage>> FindPages()
    {
        var (loader, pages) = (Shop.Get<PageLoader>(), new List<HousePage>());
        foreach (var endpoint in Shop.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>())
            if (endpoint.Metadata.GetMetadata<PageActionDescriptor>() is { } descriptor)
            {
                var route = "/" + endpoint.RoutePattern.RawText!.Trim('/').ToLowerInvariant();
                var page = await loader.LoadAsync(descriptor, EndpointMetadataCollection.Empty);
                foreach (var handler in page.HandlerMethods.Select(h => h.Name).Append(null).Distinct())
                {
                    var door = Door.Listed.Single(d => d.Route == (handler is null ? route : $"{route}?handler={handler.ToLowerInvariant()}"));
                    pages.Add(new HousePage(door, door.Address(_tag.ToString()), page, handler));
                }
            }
        return [.. pages.DistinctBy(p => p.Door.Route).OrderBy(p => p.EndsTheVisit).ThenBy(p => p.Address, StringComparer.Ordinal)];
    }

    /// <summary>What the program wrote into its log when it last broke.</summary>
    public string Broke => Shop.Log.All.LastOrDefault(l => l.Contains("Exception", StringComparison.Ordinal)) is { } line ? line[..Math.Min(700, line.Length)] : "";

    /// <summary>A token that this visitor's forms are taken with, from any page that has one.</summary>
    public async Task<string> Token(Visitor visitor)
    {
        if (_tokens.TryGetValue(visitor, out var known))
            return known;
        var page = await visitor.Open(visitor == Owner ? "/shop/strings/new" : visitor == Client ? "/my/contact" : $"/t/{_tag}/found");
        return _tokens[visitor] = page.Document.QuerySelector("[name=__RequestVerificationToken]")!.GetAttribute("value")!;
    }
}

/// <summary>A page as one of its handlers sees it.</summary>
/// <param name="Door">As listed.</param>
/// <param name="Address">Something behind the door.</param>
/// <param name="Page">The page, with all its handlers.</param>
/// <param name="Handler">Null for the handlers without a name.</param>
public sealed record HousePage(Door Door, string Address, CompiledPageActionDescriptor Page, string? Handler)
{
    private IEnumerable<HandlerMethodDescriptor> Handlers => Page.HandlerMethods.Where(h => h.Name == Handler);

    public bool TakesForms => Handlers.Any(h => h.HttpMethod == "Post");

    /// <summary>Reads something out of the query of its address.</summary>
    public bool Looks => Page.BoundProperties.Any(b => ((PageBoundPropertyDescriptor)b).Property.GetCustomAttribute<BindPropertyAttribute>()?.SupportsGet == true)
        || Handlers.Any(h => h.HttpMethod == "Get" && h.Parameters.Count > 0);

    /// <summary>Comes last, or nothing after it would get in.</summary>
    public bool EndsTheVisit => Door.Route.Contains("out", StringComparison.Ordinal) || Door.Route.Contains("forget", StringComparison.Ordinal) || Door.Route.Contains("password", StringComparison.Ordinal);

    public string Asked(string query) => Address + (Handler is null ? "?" : "&") + query;

    /// <summary>All that is bound for a verb, down to the last property of the inputs.</summary>
    public IEnumerable<FormField> Fields(string verb) => Page.BoundProperties
        .SelectMany(p => FormField.Of(p.ParameterType, p.Name))
        .Concat(Handlers.Where(h => h.HttpMethod == verb).SelectMany(h => h.Parameters).SelectMany(p => FormField.Of(p.ParameterType, p.Name)))
        .DistinctBy(f => f.Name);
}
