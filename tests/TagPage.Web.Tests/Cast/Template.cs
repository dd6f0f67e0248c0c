using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Cast;

/// <summary>A file with the whole schema and nothing in it, made once: copying it is quicker than migrating each time.</summary>
public static class Template
{
    private static readonly Lazy<DataFolder> Made = new(Make);

    public static void CopyTo(string folder) =>
        File.Copy(Made.Value.DatabaseFile, Path.Combine(folder, Path.GetFileName(Made.Value.DatabaseFile)), overwrite: true);

    public static void Delete()
    {
        if (Made.IsValueCreated)
            Directory.Delete(Made.Value.Root, recursive: true);
    }

    private static DataFolder Make()
    {
        using var made = new EmptyDatabase();
        made.Migrator([.. Migration.Embedded]).Run();
        var folder = new DataFolder(made.Folder.Root + "-template");
        made.Database.CopyTo(folder.DatabaseFile);
        new Database(folder).Dispose(); // No longer marked as a copy.
        return folder;
    }
}
