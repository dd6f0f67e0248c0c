using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class NewModel(RacketStore store) : PageModel
{
    [BindProperty(SupportsGet = true)]
    public long Player { get; set; }

    [BindProperty]
    public RacketInput Input { get; set; } = new();

    public RacketStore.Owner Owner { get; private set; } = new();

    public IActionResult OnGet()
    {
        if (!Load())
            return NotFound();
        Input = new RacketInput { FormKey = FormKey.New(), Number = Owner.NextNumber, Sport = Owner.LastSport };
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!Load())
            return NotFound();
        if (!ModelState.IsValid || this.Asks(RacketQuestions.Of(Input), Input.Confirmed))
            return Page();
        switch (store.Add(Who.Shop, Player, Input.ToEntry()))
        {
            case Outcome.Refused refused:
                return this.Refuse(refused);
            case Outcome.Done done:
                this.Say($"Racket {Input.Number} of {Owner.Name} is on file.", "Make its tag", $"/shop/tags/new?racket={done.Id}");
                return Redirect($"/shop/rackets/{done.Id}");
        }
        return NotFound();
    }

    private bool Load()
    {
        if (store.Player(Player) is not { } owner)
            return false;
        Owner = owner;
        return true;
    }
}
