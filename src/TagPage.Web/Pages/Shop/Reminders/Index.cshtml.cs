using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class IndexModel(ReminderListStore store, MailSettings mail, DataFolder folder, ShopClock clock) : PageModel
{
    public IReadOnlyList<ReminderRow> Reminders { get; private set; } = [];

    public IReadOnlyList<MailRow> Unsent { get; private set; } = [];

    /// <summary>How email leaves the shop, in words.</summary>
    public string MailWay => mail.HasServer ? $"Email goes out through {mail.Host}." : $"No mail server is set, so emails become files in {folder.Mail}.";

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public void OnGet()
    {
        Reminders = store.Newest();
        Unsent = store.Unsent();
    }
}
