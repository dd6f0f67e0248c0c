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
        await using (var written = Create(file + ".new"))
            await mail.WriteToAsync(written, cancel);
        File.Move(file + ".new", file, overwrite: true);
    }

    /// <summary>Private links stand in it: it is its owner's alone from the first byte.</summary>
    private static FileStream Create(string file)
    {
        File.Delete(file);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Options = FileOptions.Asynchronous };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return new FileStream(file, options);
    }
}
