using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Clients;
using TagPage.Records.FirstVisits;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class FirstVisitModel(FirstVisitStore store, ClientStore clients, RacketStore rackets) : PageModel
{
    [BindProperty]
    public FirstVisitInput Input { get; set; } = new();

    public void OnGet() => Input = new FirstVisitInput { FormKey = FormKey.New(), Sport = rackets.LastSport() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(clients.ReachedLike(Input.FormKey, Input.Phone, Input.Mail), Input.Confirmed))
            return Page();
        return this.After(store.Add(User.AtShop(), Input.ToEntry()), id => this.GoOn($"/shop/rackets/{id}",
            $"{Input.Name} is on file with {(Input.ClientPlays ? Input.Name : Input.PlayerName)}’s first racket.", "New job", $"/shop/jobs/new?racket={id}"));
    }
}
