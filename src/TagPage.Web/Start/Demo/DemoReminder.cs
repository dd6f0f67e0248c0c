using TagPage.Records.DueDates;
using TagPage.Records.Outbox;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;

namespace TagPage.Web.Start.Demo;

/// <summary>A reminder that can be tried: the newest one still waiting for an answer, or a new one to whoever is most overdue.</summary>
public sealed class DemoReminder(ReminderListStore list, ReminderStore reminders, NewReminderStore news, DueStore due, LinkTokens keys)
{
    /// <summary>Path of its private page; null where nobody is due.</summary>
    public string? Path() => (Open() ?? Make()) is { } token ? "/n/" + token : null;

    private string? Open() => list.Newest()
        .Where(n => !n.IsAnswered)
        .Select(n => keys.Token(LinkPurpose.Reminder, n.Id, n.Secret))
        .FirstOrDefault(token => reminders.Of(token) is not null);

    private string? Make()
    {
        // The household with the most to answer shows the most.
        foreach (var household in due.List(withUnseen: false).Households.OrderByDescending(h => h.Rackets.Count))
            if (news.Add(Who.Shop, household.Client.ClientId, new NewReminderEntry { FormKey = FormKey.New() }) is Outcome.Done done)
                return keys.Token(LinkPurpose.Reminder, done.Id, reminders.Get(done.Id)!.Secret);
        return null;
    }
}
