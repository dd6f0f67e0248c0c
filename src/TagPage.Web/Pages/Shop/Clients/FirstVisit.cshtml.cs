using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Pages.Shop.Rackets;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class FirstVisitModel(FirstVisitStore store, ClientStore clients, RacketStore rackets) : PageModel
{
    [BindProperty]
    public FirstVisitInput Input { get; set; } = new();

    public void OnGet() => Input = new FirstVisitInput { FormKey = FormKey.New(), Sport = rackets.LastSport() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(clients.Doubts(Input.FormKey ?? "", Input.Phone, Input.Mail), Input.Confirmed))
            return Page();
        switch (store.Add(Input))
        {
            case Outcome.Refused refused:
                return this.Refuse(refused);
            case Outcome.Done done:
                this.Say($"{Input.Name} is on file with {Input.ToPlayer().Name}’s first racket.", "New job", $"/shop/jobs/new?racket={done.Id}");
                return Redirect($"/shop/rackets/{done.Id}");
        }
        return NotFound();
    }
}
