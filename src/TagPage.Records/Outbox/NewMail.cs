namespace TagPage.Records.Outbox;

/// <summary>A mail to be queued.</summary>
/// <param name="Kind">What it is; decides its addressee and headers.</param>
/// <param name="ToClientId">The client it goes to; null for the shop itself.</param>
/// <param name="Subject">One line.</param>
/// <param name="Body">Its words; links and digits are made when it is sent.</param>
public sealed record NewMail(MailKind Kind, long? ToClientId, string Subject, MailText Body)
{
    public long? ReminderId { get; init; }

    /// <summary>Of a FinderAnswer: the finder's message it answers.</summary>
    public long? EventId { get; init; }

    /// <summary>Of a OwnPageLink: the link it brings.</summary>
    public long? LinkId { get; init; }

    /// <summary>Of a OwnPageCode: the code it brings.</summary>
    public long? CodeId { get; init; }

    /// <summary>The bill that goes with it as a PDF.</summary>
    public long? BillId { get; init; }

    /// <summary>The invitation it brings to a helper.</summary>
    public long? InvitationId { get; init; }

    /// <summary>Where it goes instead of the client's address on file, or the shop's.</summary>
    public string? ToAddress { get; init; }

    /// <summary>Null for immediately.</summary>
    public DateTimeOffset? NotBefore { get; init; }
}

public enum MailKind { Reminder, FoundNotice, ShopNotice, FinderAnswer, OwnPageLink, OwnPageCode, ClientNotice }
