using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Rackets;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class EditModel(RacketStore store) : PageModel
{
    [BindProperty]
    public RacketInput Input { get; set; } = new();

    public RacketStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new RacketInput
        {
            Version = Saved.Version,
            Number = Saved.Number,
            State = Saved.State,
            Sport = Saved.Sport,
            Frame = Saved.Frame,
            TapeColour = Saved.TapeColour,
            HeadSize = Saved.HeadSize,
            HeadSizeUnit = Saved.HeadSizeUnit,
            PatternMains = Saved.PatternMains,
            PatternCrosses = Saved.PatternCrosses,
            LengthCm = Saved.LengthCm,
            Grip = Saved.Grip,
            OwnDate = Saved.OwnDate,
            OwnDateNote = Saved.OwnDateNote,
            Note = Saved.Note,
        };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!ModelState.IsValid || this.Asks(Questions(), Input.Confirmed))
            return Page();
        switch (store.Change(Who.Shop, id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused, Saved.Version);
        }
        this.Say($"Racket {Input.Number} of {Saved.PlayerName} is saved.");
        return Redirect($"/shop/rackets/{id}");
    }

    private IReadOnlyList<Question> Questions() =>
        Input.State == RacketState.Sold && Saved.IsTagged
            ? [.. RacketQuestions.Of(Input), new Question(nameof(Input.State), "A sold racket’s tag stops working for good. Choose another state, or tick below to retire it.")]
            : RacketQuestions.Of(Input);

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
