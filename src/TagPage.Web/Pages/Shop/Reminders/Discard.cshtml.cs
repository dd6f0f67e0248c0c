using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class DiscardModel(ReminderListStore store, SendReminderStore sending) : PageModel
{
    public ReminderRow Reminder { get; private set; } = new();

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
        this.Say("The reminder is withdrawn.");
        return Redirect($"/shop/nudges/{id}");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } reminder)
            return false;
        Reminder = reminder;
        return true;
    }
}
