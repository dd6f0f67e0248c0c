using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class SpecModel(RacketStore rackets, SpecStore store, ShopClock clock) : PageModel
{
    [BindProperty]
    public SpecInput Input { get; set; } = new();

    public RacketStore.Row Racket { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new SpecInput
        {
            FormKey = FormKey.New(),
            MeasuredOn = clock.Today,
            StiffnessScale = store.Scales() is [var last, ..] ? last : null,
            Strung = true,
            GripOn = true,
        };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!ModelState.IsValid || this.Asks(SpecQuestions.Of(Racket.Sport, clock.Today, Input), Input.Confirmed))
            return Page();
        switch (store.Add(Who.Shop, id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say($"The spec of racket {Racket.Number} is saved.");
        return Redirect($"/shop/rackets/{id}#specs");
    }

    private bool Load(long id)
    {
        if (rackets.Get(id) is not { } row)
            return false;
        Racket = row;
        return true;
    }
}
