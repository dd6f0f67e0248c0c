using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class SentModel(ReminderListStore store, SendReminderStore sending) : RecordPage<ReminderRow>
{
    [BindProperty]
    public SentHow? How { get; set; }

    protected override ReminderRow? Find(long id) => store.Get(id);

    public void OnGet()
    {
    }

    public IActionResult OnPost() => How is { } how and not (SentHow.Mail or SentHow.Phone)
        ? this.After(sending.NoteSent(User.AtShop(), Id, how), _ => this.GoOn($"/shop/nudges/{Id}", "It is noted as sent."))
        : this.Refuse(new FieldFault("", "Choose how it went out."));
}
