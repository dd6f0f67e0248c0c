using TagPage.Records.Outbox;

namespace TagPage.Records.Reminders;

/// <summary>Writes reminders: the shop's own words where it has some, else the product's in the client's language.</summary>
public interface IReminderMails
{
    /// <param name="id">The reminder's, whose links the mail holds.</param>
    /// <param name="household">Who is reminded of what.</param>
    WrittenMail Reminder(long id, NewReminderStore.Household household);
}
