using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Stops;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Stops;

public sealed class IndexModel(StopStore store) : PageModel
{
    public IReadOnlyList<StopRow> Stops => store.List();

    public void OnGet()
    {
    }

    public IActionResult OnPostEarlier(long stop) =>
        this.After(store.Earlier(User.AtShop(), stop), _ => this.GoOn("/shop/stops", $"{store.Get(stop)!.Name} comes earlier on the round."));
}
