using MailKit;

namespace TagPage.Web.Mail;

/// <summary>
/// Listens to one SMTP exchange: how long it waits for a silent server, starting again with everything that is said, and
/// whether the fate of the email is open.
/// </summary>
public sealed class SmtpPatience : IProtocolLogger, ITransferProgress
{
    /// <summary>RFC 5321, section 4.5.3.2: at least 5 minutes for the greeting, MAIL and RCPT, 2 for DATA.</summary>
    public static readonly TimeSpan ForAReply = TimeSpan.FromMinutes(5);

    /// <summary>Sections 4.5.3.2.5 and 4.5.3.2.6: at least 3 minutes for a block of the mail, 10 for the answer to its end.</summary>
    public static readonly TimeSpan ForTheMail = TimeSpan.FromMinutes(10);

    private readonly CancellationTokenSource _over;
    private readonly CancellationTokenSource _either;
    private bool _isUnderWay;
    private bool _isRefused;

    public SmtpPatience(TimeProvider clock, CancellationToken cancel)
    {
        _over = new CancellationTokenSource(ForAReply, clock);
        _either = CancellationTokenSource.CreateLinkedTokenSource(_over.Token, cancel);
    }

    /// <summary>Cancelled when it has waited long enough, or the program ends.</summary>
    public CancellationToken Token => _either.Token;

    /// <summary>The server got some of the mail, perhaps all, and has not refused it.</summary>
    public bool IsFateOpen => _isUnderWay && !_isRefused;

    public IAuthenticationSecretDetector? AuthenticationSecretDetector { get; set; }

    public void LogConnect(Uri uri) => Restart();

    public void LogClient(byte[] buffer, int offset, int count) => Restart();

    /// <summary>Section 4.2.1: an answer that begins with 4 or 5 says that the mail was not taken.</summary>
    public void LogServer(byte[] buffer, int offset, int count)
    {
        if (_isUnderWay && buffer[offset] is (byte)'4' or (byte)'5')
            _isRefused = true;
        Restart();
    }

    /// <summary>The first bytes after the server said that it is ready for the mail.</summary>
    public void Report(long bytesTransferred, long totalSize) => Report(bytesTransferred);

    public void Report(long bytesTransferred)
    {
        _isUnderWay = true;
        Restart();
    }

    public void Dispose()
    {
        _either.Dispose();
        _over.Dispose();
    }

    private void Restart() => _over.CancelAfter(_isUnderWay ? ForTheMail : ForAReply);
}
