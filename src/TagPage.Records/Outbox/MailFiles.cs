using TagPage.Records.Storage;

namespace TagPage.Records.Outbox;

/// <summary>The emails kept as files in the data folder if no mail server is set.</summary>
public sealed class MailFiles(DataFolder folder)
{
    public string PathOf(string messageId) => Path.Combine(folder.Mail, messageId.Split('@')[0] + ".eml");

    public void Prune(DateTimeOffset before)
    {
        foreach (var file in Directory.EnumerateFiles(folder.Mail).Where(f => File.GetLastWriteTimeUtc(f) < before.UtcDateTime))
            File.Delete(file);
    }
}
