using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>Deletes whoever was forgotten from an older backup too, so that none has to be thrown away for it.</summary>
internal static class BackupCleaner
{
    public static void Clean(BackupFile backup, IReadOnlyList<string> marks, IReadOnlyList<Migrator.Step> steps, DateTimeOffset now)
    {
        if (Held(backup, marks, steps) is not { Count: > 0 } forgotten)
            return;
        BackupFolder.Place(backup, unfinished =>
        {
            File.Copy(backup.Path, unfinished);
            Forget(unfinished, forgotten, now);
        });
    }

    /// <summary>Those among the forgotten whom it holds; of another version's tables nobody knows.</summary>
    private static IReadOnlyList<long> Held(BackupFile backup, IReadOnlyList<string> marks, IReadOnlyList<Migrator.Step> steps)
    {
        using var copy = FullCheck.Open(backup.Path);
        return Migrator.StepsOf(copy).SequenceEqual(steps) ? ForgottenMarks.BroughtBack(copy, marks) : [];
    }

    private static void Forget(string file, IReadOnlyList<long> clients, DateTimeOffset now)
    {
        using (var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true, Pooling = false }.ToString()))
        {
            copy.Open();
            copy.Execute("PRAGMA secure_delete = ON; BEGIN IMMEDIATE;");
            foreach (var client in clients)
                EraseStore.EraseRecords(copy, client, now);
            copy.Execute("COMMIT");
        }
        using var check = FullCheck.Open(file);
        if (FullCheck.Finding(check) is { } finding)
            throw new UnsoundBackupException(finding);
    }
}
