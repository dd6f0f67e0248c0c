using System.Text;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Backups;
using TagPage.Records.Import;
using TagPage.Records.Outbox;
using TagPage.Records.Privacy;
using TagPage.Records.Search;
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
        Check = new DatabaseCheck(Street.Database, Street.Time, NullLogger<DatabaseCheck>.Instance);
        Store = new BackupStore(Street.Database, Street.Folder, Settings, new BackupSeal(Street.Folder), Check, Street.Clock, Street.Time, NullLogger<BackupStore>.Instance);
    }

    public Street Street { get; } = new();

    public BackupSettingStore Settings => new(Street.Database, Street.Folder);

    public BackupStore Store { get; }

    public DatabaseCheck Check { get; }

    public Restorer Restorer => new(Street.Database, Street.Folder, Store, new NameKeeper(Street.Database), Migration.Embedded, Street.Time, NullLogger<Migrator>.Instance);

    /// <summary>A folder elsewhere, as on another drive.</summary>
    public string Drive { get; } = Directory.CreateTempSubdirectory("tagpage-drive-").FullName;

    /// <summary>The data folder of a machine on which nothing is yet.</summary>
    public DataFolder NewMachine => new(Drive + ".new-machine");

    public string[] Own => Names(Street.Folder.Backups);

    public string[] OnDrive => Names(Drive);

    /// <summary>Made by hand, a minute before whatever comes next; its path.</summary>
    public string BackUp()
    {
        Assert.Null(Store.Make(BackupFile.ByHand));
        var file = Store.List()[0].Path;
        Street.Time.Advance(TimeSpan.FromMinutes(1));
        return file;
    }

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

    /// <summary>Whether a word stands in a file, wherever.</summary>
    public static bool Says(string file, string word) => Encoding.Latin1.GetString(File.ReadAllBytes(file)).Contains(word, StringComparison.Ordinal);

    public void Forget(long client) => new EraseStore(Street.Database, new MailFiles(Street.Folder), new Uploads(Street.Folder, Street.Time), Street.Folder, Street.Time, NullLogger<EraseStore>.Instance).Erase(client);

    private static string[] Names(string folder) => [.. Directory.GetFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    public void Dispose()
    {
        Check.Dispose();
        Street.Dispose();
        foreach (var folder in Directory.GetDirectories(Path.GetTempPath(), Path.GetFileName(Drive) + "*"))
            Directory.Delete(folder, recursive: true);
    }
}
