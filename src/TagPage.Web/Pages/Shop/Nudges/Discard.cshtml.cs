using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.Shop.Nudges;

public sealed class DiscardModel(NudgeListStore store, SendNudgeStore sending) : PageModel
{
    public NudgeRow Nudge { get; private set; } = new();

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        switch (sending.Discard(id))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say("The reminder is taken back.");
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
