using TagPage.Records.Clients;
using TagPage.Records.Jobs;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Reminders;

namespace TagPage.Records.Tests.Cast;

/// <summary>Writes mails of one word: records are tested without the web's sentences.</summary>
internal sealed class Mails : IOwnPageMails, IJobMails, IReminderMails, IFinderMails
{
    public WrittenMail Reminder(long id, NewReminderStore.Household household) => Of("reminder");

    public WrittenMail Link(OwnPageLinkStore.Row link) => Of("link");

    public WrittenMail Code(Addressee client, long code) => Of("code");

    public WrittenMail FoundChoiceChanged(Addressee client, FoundChoice choice) => Of("choice");

    public WrittenMail ContactChanged(Addressee client) => Of("contact");

    public WrittenMail Forgetting(Addressee client, DateOnly day) => Of("forgetting");

    public WrittenMail Ready(IReadOnlyList<JobRow> jobs) => Of(string.Join(", ", jobs.Select(job => job.Ticket)) + " ready");

    public WrittenMail Received(JobRow job) => Of("received");

    public WrittenMail Acted(MailKind kind, Addressee client, IReadOnlyList<FoundNoticeRow> events) => Of("found");

    public WrittenMail Answer(string language, string answer) => Of("answer");

    private static WrittenMail Of(string word) => new(word, word);
}
