using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class MailModel(ReminderListStore store, SendReminderStore sending, ReminderMails texts) : RecordPage<ReminderRow>
{
    protected override ReminderRow? Find(long id) => store.Get(id);

    public void OnGet()
    {
    }

    public IActionResult OnPost()
    {
        var words = texts.Of(Saved);
        return this.After(sending.Mail(Who.Shop, Id, words.Subject, words.Queued), _ => this.GoOn($"/shop/nudges/{Id}", "The email is on its way."));
    }
}
