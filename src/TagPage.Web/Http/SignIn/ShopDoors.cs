using System.Security.Claims;
using Microsoft.AspNetCore.Mvc.Infrastructure;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace TagPage.Web.Http.SignIn;

/// <summary>Whether somebody of the shop may open an address, so that nobody is shown a link that would refuse them.</summary>
public sealed class ShopDoors(IActionDescriptorCollectionProvider actions)
{
    private sealed record Door(string[] Route, bool ForBench);

    private readonly Lazy<IReadOnlyList<Door>> _doors = new(() =>
    [
        .. actions.ActionDescriptors.Items.OfType<PageActionDescriptor>()
            .Where(page => page.ViewEnginePath.StartsWith("/Shop/", StringComparison.Ordinal))
            .Select(page => new Door(Split(page.AttributeRouteInfo!.Template!), BenchPages.All.Contains(page.ViewEnginePath)))
            .OrderByDescending(door => door.Route.Count(IsFixed)),
    ]);

    /// <param name="who">Signed in to the shop.</param>
    /// <param name="address">As a link names it; one that is no page of the shop's is open.</param>
    public bool IsOpen(ClaimsPrincipal who, string address) =>
        who.IsOwner() || !address.StartsWith("/shop", StringComparison.OrdinalIgnoreCase) || ForBench(Split(address.Split('?', '#')[0]));

    private bool ForBench(string[] path) => _doors.Value.FirstOrDefault(door => Fits(door.Route, path))?.ForBench ?? true;

    private static bool Fits(string[] route, string[] path)
    {
        for (var n = 0; n < route.Length; n++)
        {
            if (route[n].StartsWith("{*", StringComparison.Ordinal))
                return true;
            if (n < path.Length ? !Fits(route[n], path[n]) : !route[n].EndsWith("?}", StringComparison.Ordinal))
                return false;
        }
        return path.Length <= route.Length;
    }

    private static bool Fits(string part, string typed) =>
        IsFixed(part) ? part.Equals(typed, StringComparison.OrdinalIgnoreCase) : !part.Contains(":long", StringComparison.Ordinal) || typed.All(char.IsAsciiDigit);

    private static bool IsFixed(string part) => !part.StartsWith('{');

    private static string[] Split(string path) => path.Split('/', StringSplitOptions.RemoveEmptyEntries);
}
