using System.Text.RegularExpressions;
using MailKit.Net.Smtp;

namespace TagPage.Web.Mail;

/// <summary>Whether a mail server says that nobody has an address, and not that the shop may not send there.</summary>
public static partial class RefusedAddress
{
    public static bool Is(Exception fault) =>
        fault is SmtpCommandException
        {
            ErrorCode: SmtpErrorCode.RecipientNotAccepted,
            StatusCode: SmtpStatusCode.MailboxUnavailable or SmtpStatusCode.UserNotLocalTryAlternatePath or SmtpStatusCode.MailboxNameNotAllowed,
        } && !Policy().IsMatch(fault.Message);

    /// <summary>RFC 3463, section 3.8: security or policy, as where relaying is denied.</summary>
    [GeneratedRegex(@"(?<![\d.])5\.7\.\d")]
    private static partial Regex Policy();
}
