using MimeKit;
using TagPage.Web.Data;

namespace TagPage.Web.Mail;

/// <summary>Where no server is set, a mail becomes a file in the data folder's mail/, to be opened by hand. Old ones are pruned.</summary>
public sealed class FolderCarrier(DataFolder folder, TimeProvider clock) : IMailCarrier
{
    private static readonly TimeSpan Kept = TimeSpan.FromDays(30);

    public async Task Carry(MimeMessage mail, CancellationToken cancel)
    {
        Prune();
        var file = Path.Combine(folder.Mail, mail.MessageId!.Split('@')[0] + ".eml");
        // Named after the Message-ID: sent again after a crash it replaces itself.
        await mail.WriteToAsync(file + ".new", cancel);
        File.Move(file + ".new", file, overwrite: true);
    }

    private void Prune()
    {
        var oldest = clock.GetUtcNow().UtcDateTime - Kept;
        foreach (var file in Directory.EnumerateFiles(folder.Mail).Where(f => File.GetLastWriteTimeUtc(f) < oldest))
            File.Delete(file);
    }
}
