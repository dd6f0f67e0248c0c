using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Web.Words;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Makes a backup as each night does, even while the shop runs.</summary>
internal static class BackupCommand
{
    public static void Run(string[] settings, TextWriter output)
    {
        ExistingShop.Demand(settings);
        using var app = App.Build(App.CreateBuilder(settings));
        var backups = app.Services.GetRequiredService<BackupStore>();
        if (backups.Make(BackupFile.ByHand, out var made) is { } fault)
            throw new CannotStartException("No backup was made. " + BackupWords.Fault(fault));
        output.WriteLine(Announcement.Line("Backup", made!.Path));
        if (backups.State().Second is { } second)
            output.WriteLine(second.Fault is { } failed ? $"It did not reach the second folder, {second.Folder}. {BackupWords.Fault(failed)}" : Announcement.Line("Second", second.Folder));
    }
}
