using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

public sealed class BackupSettingStore(Database database, DataFolder data)
{
    public BackupSetting Get() => database.Read(c => c.QuerySingleOrDefault<BackupSetting>(GetSql)) ?? new BackupSetting();

    private const string GetSql = "SELECT folder, days, weeks, months FROM backup_setting WHERE id = 1";

    /// <summary>The folder has to be there, so that a drive that is not plugged in is not taken for a folder to be made.</summary>
    public Outcome Change(Who who, BackupSetting wanted)
    {
        if (!who.IsOwner)
            return new Outcome.Absent();
        return WhyNot(wanted.Folder) is { } why ? new Outcome.Refused(why) : database.WriteAsOwner(who, c =>
        {
            c.Execute(ChangeSql, wanted);
            return new Outcome.Done(1);
        });
    }

    private const string ChangeSql = """
        INSERT INTO backup_setting (id, folder, days, weeks, months) VALUES (1, @Folder, @Days, @Weeks, @Months)
        ON CONFLICT (id) DO UPDATE SET folder = @Folder, days = @Days, weeks = @Weeks, months = @Months
        """;

    private Refusal? WhyNot(string folder) =>
        folder.Length == 0 ? null
        : !Path.IsPathFullyQualified(folder) || !Directory.Exists(folder) ? new BackupFolderMissing()
        : IsWithin(folder, data.Root) || IsWithin(data.Root, folder) ? new BackupFolderIsData()
        : !FolderProbe.IsWritable(folder) ? new BackupFolderNotWritable()
        : null;

    private static bool IsWithin(string inner, string outer) =>
        (Path.GetFullPath(inner).TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar)
            .StartsWith(Path.GetFullPath(outer).TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar, StringComparison.Ordinal);
}
