using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class DiscardModel(ReminderListStore store, SendReminderStore sending) : RecordPage<ReminderRow>
{
    protected override ReminderRow? Find(long id) => store.Get(id);

    public void OnGet()
    {
    }

    public IActionResult OnPost() => this.After(sending.Discard(Who.Shop, Id), _ => this.GoOn($"/shop/nudges/{Id}", "The reminder is withdrawn."));
}
