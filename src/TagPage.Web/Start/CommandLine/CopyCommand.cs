using TagPage.Records.Storage;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Makes a backup that is a data folder of its own, even while the shop runs.</summary>
internal static class CopyCommand
{
    public static void Run(string[] settings, string folder, TextWriter output)
    {
        if (Path.Exists(folder))
            throw new CannotStartException($"{Path.GetFullPath(folder)} already exists; name a folder that does not, so that no older copy is overwritten.");
        ExistingShop.Demand(settings);
        using var app = App.Build(App.CreateBuilder(settings));
        var target = new DataFolder(folder);
        Copy(app.Services.GetRequiredService<Database>(), app.Services.GetRequiredService<DataFolder>(), target);
        output.WriteLine(Announcement.Line("Copy", target.Root));
    }

    /// <summary>The database gets its name last: a copy that was cut off has keys and no database, and is refused.</summary>
    private static void Copy(Database database, DataFolder from, DataFolder to)
    {
        KeyFiles.CopyTo(from, to);
        var unnamed = to.DatabaseFile + ".new";
        database.CopyTo(unnamed);
        File.Move(unnamed, to.DatabaseFile);
    }
}
