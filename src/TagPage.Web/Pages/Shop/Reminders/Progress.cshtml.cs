using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Reminders;

/// <summary>How far a batch of reminders is.</summary>
public sealed class ProgressModel(BatchStore store, ReminderListStore list, BatchWorker worker, ShopStore shops) : RecordPage<BatchStore.Row>
{
    private const int LookAgainSeconds = 5;

    public bool IsQuiet => worker.IsQuiet;

    /// <summary>Those it made, with what became of their emails.</summary>
    public IReadOnlyDictionary<long, ReminderRow> Reminders { get; private set; } = ImmutableDictionary<long, ReminderRow>.Empty;

    /// <summary>What has become of the emails, each only where there are such: ", 5 emailed, 1 on its way".</summary>
    public string Emails => string.Concat(Fates.Select(fate => (fate.Words, N: Reminders.Values.Count(fate.Is))).Where(fate => fate.N > 0).Select(fate => $", {fate.N} {fate.Words}"));

    private static readonly (string Words, Func<ReminderRow, bool> Is)[] Fates =
    [
        ("emailed", r => r.OutboxState is "Sent"),
        ("on the way", r => r.OutboxState is "Queued" or "Leaving"),
        ("perhaps emailed", r => r.OutboxState is "MaybeSent"),
        ("answered before the email left", r => r is { OutboxState: "Failed", Answered: > 0 }),
        ("not delivered", r => r is { OutboxState: "Failed", Answered: 0, SentHow: null or SentHow.Mail }),
    ];

    public ShopDetails Shop => shops.Get();

    protected override BatchStore.Row? Find(long id) => store.Get(id);

    public void OnGet()
    {
        Reminders = list.OfBatch(Id).ToDictionary(r => r.Id);
        if (Saved.IsRunning && !IsQuiet)
            Response.Headers["Refresh"] = LookAgainSeconds.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    public IActionResult OnPostStop() =>
        this.After(store.Stop(User.AtShop(), Id), _ => this.GoOn($"/shop/nudges/batch/{Id}", "Stopped. Those already sent cannot be called back; the rest will not go out."));
}
