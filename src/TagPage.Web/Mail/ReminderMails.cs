using TagPage.Records.Outbox;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Mail;

/// <summary>A reminder's words with its links, made anew each time: links are not kept anywhere.</summary>
public sealed class ReminderMails(ReminderStore reminders, MailWriter writer, ShopStore shops, ShopClock clock) : IReminderMails
{
    /// <param name="Link">Private: opens the household's page.</param>
    /// <param name="Subject">Of the mail.</param>
    /// <param name="Mail">As Markdown, with links.</param>
    /// <param name="Sms">With the link.</param>
    /// <param name="Queued">The mail, its links still to be made.</param>
    public sealed record Texts(string Link, string Subject, string Mail, string Sms, MailText Queued);

    public WrittenMail Reminder(long id, NewReminderStore.Household household)
    {
        var rackets = NamedRacket.Of(household.Due.Select(d => (d.Racket.Player, d.Racket.Number, d.By)));
        var words = new ReminderWords(shops.Get(), Languages.OfOrEnglish(household.Language), household.Name, rackets);
        return new WrittenMail(words.Subject(), words.Mail(id));
    }

    public Texts Of(ReminderRow reminder)
    {
        var (today, shop) = (clock.Today, shops.Get());
        var rackets = NamedRacket.Of(reminders.Rackets(reminder.Id).Select(r => (r.Player, r.Number, r.Work(today, shop.StartingValues))));
        var words = new ReminderWords(shop, Languages.OfOrEnglish(reminder.Language), reminder.Client, rackets);
        var (link, stop) = (writer.ReminderLink(reminder.Id, reminder.Secret), writer.StopLink(reminder.Id, reminder.StopSecret));
        return new Texts(link, words.Subject(), PlainMail.Of(words.Mail(MailText.Words(link), MailText.Words(stop))), words.Sms(link, stop), words.Mail(reminder.Id));
    }
}
