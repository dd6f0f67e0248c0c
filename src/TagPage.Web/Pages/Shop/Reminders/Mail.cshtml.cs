using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
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
        return this.After(sending.Mail(User.AtShop(), Id, words.Subject, words.Queued), _ => this.GoOn($"/shop/nudges/{Id}", "The email is on its way."));
    }
}
