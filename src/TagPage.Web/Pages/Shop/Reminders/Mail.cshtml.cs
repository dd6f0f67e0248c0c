using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class MailModel(ReminderListStore store, SendReminderStore sending, ReminderTexts texts) : PageModel
{
    public ReminderRow Reminder { get; private set; } = new();

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        var words = texts.Of(Reminder);
        switch (sending.Mail(id, words.Subject, words.Queued))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say("The email is on its way.");
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
