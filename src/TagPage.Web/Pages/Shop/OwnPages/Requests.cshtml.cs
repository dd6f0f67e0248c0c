using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>All that clients ask for and that is not ticked off, page by page.</summary>
public sealed class RequestsModel(ClientRequestStore requests) : PageModel
{
    public ClientRequestStore.Part Open { get; private set; } = new([], 0, null);

    /// <summary>Not the first page.</summary>
    public bool IsLater { get; private set; }

    public void OnGet(string? after)
    {
        var last = long.TryParse(after, NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : 0;
        (Open, IsLater) = (requests.Open(last), last > 0);
    }

    /// <summary>Ticks off what a client asked for.</summary>
    /// <param name="id">Of the wish.</param>
    /// <param name="list">It was pressed on this list, and not on the bench.</param>
    public IActionResult OnPostDone(long id, bool list) => this.After(requests.Done(User.AtShop(), id), _ => this.GoOn(list ? "/shop/corner/requests" : "/shop", "Ticked off."));
}
