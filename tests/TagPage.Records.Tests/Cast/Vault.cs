using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Cast;

/// <summary>The street's shop with somebody who signs in, its backups and a drive beside it.</summary>
public sealed class Vault : IDisposable
{
    public Vault()
    {
        Street.Records.Change("""
            INSERT INTO account (id, name, normalized_name, role, password_hash, security_stamp, concurrency_stamp, made_at)
            VALUES ('a1', 'Runa', 'RUNA', 'Owner', 'hash', 's', 'c', '2026-11-01T00:00:00.000Z')
            """);
        Store = new BackupStore(Street.Database, Street.Folder, Settings, new BackupSeal(Street.Folder), Memory, Street.Clock, Street.Time, NullLogger<BackupStore>.Instance);
    }

    public Street Street { get; } = new();

    public BackupSettingStore Settings => new(Street.Database, Street.Folder);

    public BackupMemory Memory { get; } = new();

    public BackupStore Store { get; }

    /// <summary>A folder elsewhere, as on another drive.</summary>
    public string Drive { get; } = Directory.CreateTempSubdirectory("tagpage-drive-").FullName;

    public string[] Own => Names(Street.Folder.Backups);

    public string[] OnDrive => Names(Drive);

    /// <summary>A backup in a data folder of its own, as its next program would open it.</summary>
    public static string DumpOf(string backup)
    {
        var folder = new DataFolder(backup + ".opened");
        try
        {
            File.Copy(backup, folder.DatabaseFile);
            using var opened = new Database(folder);
            return opened.Dump();
        }
        finally
        {
            Directory.Delete(folder.Root, recursive: true);
        }
    }

    private static string[] Names(string folder) => [.. Directory.GetFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    public void Dispose()
    {
        Street.Dispose();
        if (Directory.Exists(Drive))
            Directory.Delete(Drive, recursive: true);
    }
}
