using MimeKit;

namespace TagPage.Web.Mail;

/// <summary>Takes a finished mail away. Throws when it could not: the mail is certainly not delivered, unless it says otherwise.</summary>
public interface IMailCarrier
{
    /// <exception cref="UnknownFateException">The mail may have been delivered.</exception>
    Task Carry(MimeMessage mail, CancellationToken cancel);
}

/// <summary>A mail was handed over and nobody said whether it was taken.</summary>
public sealed class UnknownFateException(string sentence, Exception cause) : Exception(sentence, cause);
