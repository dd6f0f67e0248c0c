using TagPage.Records.Accounts;
using TagPage.Records.Backups;
using TagPage.Records.Storage;

namespace TagPage.Web.Start.CommandLine;

/// <summary>
/// After a theft: ends every session and deletes all keys but the seal of backups, so that nothing given out or forged with the old ones works.
/// Tags need no key.
/// </summary>
internal static class NewKeysCommand
{
    public static void Run(string[] settings, TextWriter output)
    {
        ExistingShop.Demand(settings);
        // Not the whole start: damaged keys must not prevent new ones.
        using var app = App.CreateBuilder(settings).Build();
        var folder = app.Services.GetRequiredService<DataFolder>();
        // A running shop would keep using the old keys until its next start.
        App.OpenRecords(app.Services, alone: true);
        app.Services.GetRequiredService<EverySessionStore>().End();
        var seal = app.Services.GetRequiredService<BackupSeal>();
        var wasSealed = seal.IsSet;
        KeyFiles.Delete(folder);
        output.WriteLine("Every browser is signed out and every link sent so far is void. Tags and their labels keep working.");
        if (wasSealed)
            output.WriteLine(seal.IsSet
                ? "Backups stay sealed with the passphrase they had. Whoever has the folder can open them: set a new one under Settings → Backups."
                : "The passphrase for backups was damaged and is gone: set it again under Settings → Backups. Until then they are not sealed.");
        output.WriteLine("Start the shop and choose a new password:");
        foreach (var line in SetUpLinkCommand.Lines(app))
            output.WriteLine(line);
    }
}
