using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class IndexModel(ReminderListStore store, BatchStore batches, BatchWorker worker, ShopStore shops, MailSettings mail, DataFolder folder, ShopClock clock)
    : PageModel
{
    public IReadOnlyList<ReminderRow> Reminders { get; private set; } = [];

    public IReadOnlyList<BatchStore.Waiting> Waiting => batches.AllWaiting();

    public bool IsQuiet => worker.IsQuiet;

    public ShopDetails Shop => shops.Get();

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
