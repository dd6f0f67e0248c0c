using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;

namespace TagPage.Records.Reminders;

/// <summary>Reminds one household of a batch by email, judged when its turn comes.</summary>
public sealed class BatchReminder(NewReminderStore news, OutboxStore outbox, IReminderMails mails, ShopStore shops, ShopClock clock)
{
    /// <summary>Why a household cannot be put into a batch now; null where it can.</summary>
    public LeftOut? WhyNot(NewReminderStore.Household household, bool isDue) => household.BatchId is null ? WhyNotNow(household, isDue) : LeftOut.Waits;

    private LeftOut? WhyNotNow(NewReminderStore.Household household, bool isDue) => household switch
    {
        _ when !isDue => LeftOut.NothingDue,
        { Reminders: false } => LeftOut.NoReminders,
        { RemindBy: RemindBy.Sms } => LeftOut.WishesSms,
        { Mail: null } => LeftOut.NoMail,
        _ when news.IsQuiet(household) => LeftOut.QuietMonth,
        _ when news.IsTooSoon(household) => LeftOut.TooSoon,
        _ when shops.Get().Mail is null => LeftOut.ShopHasNoMail,
        _ => null,
    };

    /// <summary>In the caller's transaction: the reminder with its mail, or why not.</summary>
    internal (long? Reminder, LeftOut? Why) Remind(SqliteConnection connection, long client)
    {
        if (news.Get(connection, client) is not { } household)
            return (null, LeftOut.NotOnFile);
        if (WhyNotNow(household, household.Due.Count > 0) is { } why)
            return (null, why);
        var id = NewReminderStore.Insert(connection, household, clock.Now, byPhone: false);
        var mail = mails.Reminder(id, household);
        outbox.Queue(connection, new NewMail(MailKind.Reminder, client, mail.Subject, mail.Body) { ReminderId = id });
        connection.Execute("UPDATE reminder SET sent_how = 'Mail', sent_at = @Now WHERE id = @id", new { id, clock.Now });
        return (id, null);
    }
}
