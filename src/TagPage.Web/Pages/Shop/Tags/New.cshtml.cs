using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;

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
        FormKey = Records.Storage.FormKey.New();
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!Load())
            return NotFound();
        switch (store.Make(Who.Shop, Racket, FormKey ?? ""))
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
