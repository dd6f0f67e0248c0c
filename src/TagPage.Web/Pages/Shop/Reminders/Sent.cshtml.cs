using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class SentModel(ReminderListStore store, SendReminderStore sending) : PageModel
{
    [BindProperty]
    public SentHow? How { get; set; }

    public ReminderRow Reminder { get; private set; } = new();

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (How is not { } how || how is SentHow.Mail or SentHow.Phone)
            return this.Refuse(new FieldFault("", "Choose how it went out."));
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
        if (store.Get(id) is not { } reminder)
            return false;
        Reminder = reminder;
        return true;
    }
}
