using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>Deletes whoever was forgotten from older backups too, so that none has to be thrown away for it.</summary>
internal static class BackupCleaner
{
    public static void Clean(BackupFolder folder, IReadOnlyList<string> marks, IReadOnlyList<Migrator.Step> steps, DateTimeOffset now)
    {
        foreach (var backup in folder.List().Where(b => !b.IsSealed && Holds(b, marks, steps)))
            BackupFolder.Place(backup, unfinished =>
            {
                File.Copy(backup.Path, unfinished);
                Forget(unfinished, marks, now);
            });
    }

    private static bool Holds(BackupFile backup, IReadOnlyList<string> marks, IReadOnlyList<Migrator.Step> steps)
    {
        using var copy = FullCheck.Open(backup.Path);
        return Migrator.StepsOf(copy).SequenceEqual(steps) && ForgottenMarks.BroughtBack(copy, marks).Count > 0;
    }

    private static void Forget(string file, IReadOnlyList<string> marks, DateTimeOffset now)
    {
        using (var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true, Pooling = false }.ToString()))
        {
            copy.Open();
            copy.Execute("PRAGMA secure_delete = ON; BEGIN IMMEDIATE;");
            foreach (var client in ForgottenMarks.BroughtBack(copy, marks))
                EraseStore.EraseRecords(copy, client, now);
            copy.Execute("COMMIT");
        }
        using var check = FullCheck.Open(file);
        if (FullCheck.Finding(check) is { } finding)
            throw new UnsoundBackupException(finding);
    }
}
