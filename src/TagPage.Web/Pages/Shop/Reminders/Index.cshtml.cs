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

    public string? MailServer => mail.HasServer ? mail.Host : null;

    /// <summary>Where emails become files instead.</summary>
    public string MailFolder => folder.Mail;

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public void OnGet()
    {
        Reminders = store.Newest();
        Unsent = store.Unsent();
    }
}
