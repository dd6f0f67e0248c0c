using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Pages.Shop.Rackets;

namespace TagPage.Web.Pages.Shop.Tags;

public sealed class NewModel(TagStore store, RacketStore rackets) : PageModel
{
    [BindProperty(SupportsGet = true)]
    public long Racket { get; set; }

    [BindProperty]
    public string FormKey { get; set; } = "";

    public RacketStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet()
    {
        if (!Load())
            return NotFound();
        FormKey = Forms.FormKey.New();
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!Load())
            return NotFound();
        switch (store.Make(Racket, FormKey ?? ""))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say("The tag is live. Print its square and stick it on.");
        return Redirect($"/shop/rackets/{Racket}#tag");
    }

    private bool Load()
    {
        if (rackets.Get(Racket) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
