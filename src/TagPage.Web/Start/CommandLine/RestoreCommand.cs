using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Web.Words;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Goes back to a backup, also where the shop's own database is missing or damaged. The shop has to be stopped.</summary>
internal static class RestoreCommand
{
    public static void Run(string[] settings, string file, TextReader input, TextWriter output)
    {
        using var app = App.CreateBuilder(settings).Build();
        app.Services.GetRequiredService<FolderLock>().Take();
        try
        {
            var passphrase = IsSealed(file) ? Ask(input, output) : null;
            if (IsSound(app.Services))
                Replace(app.Services, file, passphrase, output);
            else
                Begin(app.Services, file, passphrase, output);
        }
        catch (NotRestoredException e)
        {
            throw new CannotStartException(RestoreWords.Of(e.Fault) + (e.Finding.Length > 0 ? $" ({e.Finding})" : ""));
        }
    }

    private static void Replace(IServiceProvider services, string file, string? passphrase, TextWriter output)
    {
        App.OpenRecords(services, alone: false);
        var aside = services.GetRequiredService<Restorer>().Restore(file, passphrase);
        output.WriteLine(Announcement.Line("Back to", Path.GetFullPath(file)));
        output.WriteLine(Announcement.Line("Before", aside));
    }

    private static void Begin(IServiceProvider services, string file, string? passphrase, TextWriter output)
    {
        var aside = Restorer.RestoreInto(services.GetRequiredService<DataFolder>(), file, passphrase, services.GetRequiredService<IReadOnlyList<Migration>>(),
            services.GetRequiredService<TimeProvider>(), NullLogger<Migrator>.Instance);
        output.WriteLine(Announcement.Line("Back to", Path.GetFullPath(file)));
        if (aside is not null)
            output.WriteLine(Announcement.Line("Before", aside));
    }

    private static bool IsSound(IServiceProvider services)
    {
        var folder = services.GetRequiredService<DataFolder>();
        try
        {
            RecordsFile.Judge(folder, services.GetRequiredService<IReadOnlyList<Migration>>());
            return RecordsFile.IsThere(folder);
        }
        catch (CannotStartException)
        {
            return false;
        }
    }

    private static bool IsSealed(string file) => File.Exists(file) && SealedFile.IsSealed(file);

    private static string? Ask(TextReader input, TextWriter output)
    {
        output.Write("Passphrase: ");
        return input.ReadLine();
    }
}
