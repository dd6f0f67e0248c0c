namespace TagPage.Web.Mail;

/// <summary>A mail to be queued.</summary>
/// <param name="Kind">What it is; decides its addressee and headers.</param>
/// <param name="ToClientId">The client it goes to; null for the shop itself.</param>
/// <param name="Subject">One line.</param>
/// <param name="Body">Plain text; {link} and {stop} stand for the nudge's links until it is sent, {answer 7} for the link to answer the finder of event 7, {corner} for the link of a CornerLink, {code} for the digits of a CornerCode.</param>
public sealed record NewMail(MailKind Kind, long? ToClientId, string Subject, string Body)
{
    public long? NudgeId { get; init; }

    /// <summary>Of a FinderAnswer: the finder's message it answers.</summary>
    public long? EventId { get; init; }

    /// <summary>Of a CornerLink: the link it brings.</summary>
    public long? LinkId { get; init; }

    /// <summary>Of a CornerCode: the code it brings.</summary>
    public long? CodeId { get; init; }

    /// <summary>Where it goes instead of the client's address on file.</summary>
    public string? ToAddress { get; init; }

    /// <summary>Null for at once.</summary>
    public DateTimeOffset? NotBefore { get; init; }
}

public enum MailKind { Nudge, FoundNotice, ShopNotice, FinderAnswer, CornerLink, CornerCode, ClientNotice }
