using MimeKit;

namespace TagPage.Web.Mail;

/// <summary>Delivers a finished email. Throws if it could not: then the email was certainly not delivered, unless the exception says otherwise.</summary>
public interface IMailCarrier
{
    /// <exception cref="UnknownFateException">The mail may have been delivered.</exception>
    Task Carry(MimeMessage mail, CancellationToken cancel);
}

/// <summary>An email was handed over, and the server did not say whether it accepted it.</summary>
public sealed class UnknownFateException(string sentence, Exception cause) : Exception(sentence, cause);
