using TagPage.Records.Clients;
using TagPage.Records.Outbox;

namespace TagPage.Records.OwnPages;

/// <summary>Writes the emails about a client's own page, in the client's language: records know what happened, others know the words.</summary>
public interface IOwnPageMails
{
    WrittenMail Link(OwnPageLinkStore.Row link);

    /// <param name="client">Who gets it.</param>
    /// <param name="code">Whose digits it brings.</param>
    WrittenMail Code(Addressee client, long code);

    /// <summary>What finders get was changed.</summary>
    WrittenMail FoundChoiceChanged(Addressee client, FoundChoice choice);

    /// <summary>To the previous address: it was changed.</summary>
    WrittenMail ContactChanged(Addressee client);

    /// <summary>All data will be deleted on that day.</summary>
    WrittenMail Forgetting(Addressee client, DateOnly day);
}
