using TagPage.Records.Outbox;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>Emails of a shop without a mail server, which become files.</summary>
public sealed class MailFileTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task File_of_an_email_is_its_owners_alone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Rights of files are those of Unix here.");
        _shop.Records.Shop();
        var client = _shop.Records.Client("Odalys Ferran");
        _shop.Records.Change("UPDATE client SET mail = 'odalys@ferran.example'");
        _shop.Database.Write(c => _shop.Get<OutboxStore>().Queue(c, new NewMail(MailKind.ClientNotice, client, "News", "A private link")));

        await _shop.MailsSent();

        var file = Assert.Single(Directory.EnumerateFiles(Path.Combine(_shop.Folder, "mail")));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, OperatingSystem.IsWindows() ? default : File.GetUnixFileMode(file));
    }
}
