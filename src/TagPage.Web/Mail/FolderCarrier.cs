using MimeKit;
using TagPage.Records.Outbox;

namespace TagPage.Web.Mail;

/// <summary>If no server is set, an email becomes a file in the data folder's mail/, to be opened by hand. Old ones are deleted.</summary>
public sealed class FolderCarrier(MailFiles files, TimeProvider clock) : IMailCarrier
{
    private static readonly TimeSpan Kept = TimeSpan.FromDays(30);

    public async Task Carry(MimeMessage mail, CancellationToken cancel)
    {
        files.Prune(clock.GetUtcNow() - Kept);
        // Named after the Message-ID: sent again after a crash it replaces itself.
        var file = files.PathOf(mail.MessageId!);
        await mail.WriteToAsync(file + ".new", cancel);
        File.Move(file + ".new", file, overwrite: true);
    }
}
