using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class DiscardModel(ReminderListStore store, SendReminderStore sending) : RecordPage<ReminderRow>
{
    protected override ReminderRow? Find(long id) => store.Get(id);

    public void OnGet()
    {
    }

    public IActionResult OnPost() => this.After(sending.Discard(User.AtShop(), Id), _ => this.GoOn($"/shop/nudges/{Id}", "The reminder is withdrawn."));
}
