using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Hours;

public sealed class NewModel(HoursStore store, ShopClock clock) : PageModel
{
    [BindProperty]
    public HoursInput Input { get; set; } = new();

    public HoursStore.Racket Racket { get; private set; } = new();

    public IActionResult OnGet(long racket)
    {
        if (!Load(racket))
            return NotFound();
        Input = new HoursInput { FormKey = FormKey.New(), PlayedOn = clock.Today };
        return Page();
    }

    public IActionResult OnPost(long racket)
    {
        if (!Load(racket))
            return NotFound();
        this.Note(JobDates.NotToCome(clock.Today, (nameof(Input.PlayedOn), Input.PlayedOn)));
        if (!ModelState.IsValid)
            return Page();
        switch (store.Add(racket, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say("The hours are saved.");
        return Redirect($"/shop/rackets/{racket}#played");
    }

    private bool Load(long racket)
    {
        if (store.Of(racket) is not { } row)
            return false;
        Racket = row;
        return true;
    }
}
