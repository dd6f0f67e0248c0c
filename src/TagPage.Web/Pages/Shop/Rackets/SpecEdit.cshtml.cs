using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class SpecEditModel(RacketStore rackets, SpecStore store, ShopClock clock) : PageModel
{
    [BindProperty]
    public SpecInput Input { get; set; } = new();

    public RacketStore.Row Racket { get; private set; } = new();

    public SpecStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long racket, long id)
    {
        if (!Load(racket, id))
            return NotFound();
        Input = new SpecInput
        {
            Version = Saved.Version,
            MeasuredOn = Saved.MeasuredOn,
            WeightG = Saved.WeightG,
            BalanceMm = Saved.BalanceMm,
            SwingWeight = Saved.SwingWeight,
            Stiffness = Saved.Stiffness,
            StiffnessScale = Saved.StiffnessScale,
            LengthMm = Saved.LengthMm,
            Strung = Saved.Strung,
            GripOn = Saved.GripOn,
            DampenerOn = Saved.DampenerOn,
            Note = Saved.Note,
        };
        return Page();
    }

    public IActionResult OnPost(long racket, long id)
    {
        if (!Load(racket, id))
            return NotFound();
        if (!ModelState.IsValid || this.Asks(SpecQuestions.Of(Racket.Sport, clock.Today, Input), Input.Confirmed))
            return Page();
        switch (store.Change(Who.Shop, racket, id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused, Saved.Version);
        }
        this.Say("The spec is saved.");
        return Redirect($"/shop/rackets/{racket}#specs");
    }

    private bool Load(long racket, long id)
    {
        if (rackets.Get(racket) is not { } row || store.Get(racket, id) is not { } saved)
            return false;
        (Racket, Saved) = (row, saved);
        return true;
    }
}
