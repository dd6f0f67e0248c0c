using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.Shop.Nudges;

public sealed class SentModel(NudgeListStore store, SendNudgeStore sending) : PageModel
{
    [BindProperty]
    public SentHow? How { get; set; }

    public NudgeRow Nudge { get; private set; } = new();

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (How is not { } how || how is SentHow.Mail or SentHow.Phone)
            return this.Refuse(new Outcome.Refused("", "Choose how it went out."));
        switch (sending.NoteSent(id, how))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say("It is noted as sent.");
        return Redirect($"/shop/nudges/{id}");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } nudge)
            return false;
        Nudge = nudge;
        return true;
    }
}
