using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Pages.Nudge;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Nudges;

/// <summary>The owner notes what a household said on the phone: the same answers with the same effects.</summary>
public sealed class AnswerModel(NudgeListStore list, NudgeStore nudges, AnswerStore answers, ShopStore shops, ShopClock clock) : PageModel
{
    [BindProperty]
    public AnswerInput Input { get; set; } = new();

    public NudgeRow Nudge { get; private set; } = new();

    public AnswerForm Form { get; private set; } = default!;

    private IReadOnlyList<NudgeRacket> _rackets = [];

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = AnswerInput.Of(_rackets, Nudge.Reminders);
        return Show();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        var reader = new AnswerReader(Languages.English, _rackets, clock.Today);
        var read = reader.Read(Input);
        foreach (var (field, sentence) in reader.Faults)
            ModelState.AddModelError("Input." + field, sentence);
        if (!ModelState.IsValid)
            return Show();
        if (answers.Save(nudges.Get(id)!, new(read, Input.Reminders, AnsweredBy.Owner)).Count > 0)
        {
            this.Refuse(new Outcome.Refused("", "Nothing was saved: one of these rackets went to the machine meanwhile. Look at the bench, then note the rest."));
            _rackets = nudges.Rackets(id);
            return Show();
        }
        this.Say($"The answer of {Nudge.Client} is noted.", "To the bench", "/shop");
        return Redirect($"/shop/nudges/{id}");
    }

    private PageResult Show()
    {
        Form = AnswerForm.Of(Input, _rackets, Languages.English, clock.Today, shops.Get().StartingValues);
        return Page();
    }

    private bool Load(long id)
    {
        if (list.Get(id) is not { Discarded: false, Replaced: false } nudge)
            return false;
        (Nudge, _rackets) = (nudge, nudges.Rackets(id));
        return true;
    }
}
