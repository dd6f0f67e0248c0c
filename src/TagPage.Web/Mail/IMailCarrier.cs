using MimeKit;

namespace TagPage.Web.Mail;

/// <summary>Takes a finished mail away. Throws when it could not.</summary>
public interface IMailCarrier
{
    Task Carry(MimeMessage mail, CancellationToken cancel);
}
