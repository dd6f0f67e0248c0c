using TagPage.Records.Clients;
using TagPage.Records.Outbox;

namespace TagPage.Records.LostAndFound;

/// <summary>Writes the mails between a finder and the person who looks after a racket.</summary>
public interface IFinderMails
{
    /// <param name="kind">To the client, or to the shop in their place.</param>
    /// <param name="client">Who looks after the rackets.</param>
    /// <param name="events">What finders did, oldest first.</param>
    WrittenMail Acted(MailKind kind, Addressee client, IReadOnlyList<FoundNoticeRow> events);

    /// <param name="language">The finder's.</param>
    /// <param name="answer">As it was typed.</param>
    WrittenMail Answer(string language, string answer);
}
