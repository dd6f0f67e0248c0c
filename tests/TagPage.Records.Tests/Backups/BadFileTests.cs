using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Backups;

/// <summary>What somebody may name or send in place of a backup, and that nothing of the live data changes for it.</summary>
public sealed class BadFileTests : IDisposable
{
    private readonly Vault _vault = new();
    private readonly string _file;

    public BadFileTests()
    {
        Assert.Null(_vault.Store.Make(BackupFile.ByHand));
        _file = Path.Combine(_vault.Drive, "sent.db");
        File.Copy(_vault.Store.List()[0].Path, _file);
    }

    public void Dispose() => _vault.Dispose();

    [Theory]
    [InlineData("not there", RestoreFault.Missing)]
    [InlineData("a folder", RestoreFault.IsFolder)]
    [InlineData("a link", RestoreFault.IsLink)]
    [InlineData("empty", RestoreFault.Empty)]
    [InlineData("text", RestoreFault.NoBackup)]
    [InlineData("a picture", RestoreFault.NoBackup)]
    [InlineData("only its head", RestoreFault.Cut)]
    [InlineData("cut in half", RestoreFault.Cut)]
    [InlineData("cut by a page", RestoreFault.Cut)]
    [InlineData("another program's", RestoreFault.OtherProgram)]
    [InlineData("SQLite without a table", RestoreFault.OtherProgram)]
    [InlineData("this program's number and another's tables", RestoreFault.OtherTables)]
    [InlineData("newer", RestoreFault.Newer)]
    [InlineData("tables made by another text", RestoreFault.OtherTables)]
    [InlineData("a table dropped", RestoreFault.Changed)]
    [InlineData("a table more", RestoreFault.Changed)]
    [InlineData("a column more", RestoreFault.Changed)]
    [InlineData("an index dropped", RestoreFault.Changed)]
    [InlineData("a view more", RestoreFault.Changed)]
    [InlineData("a trigger of its own", RestoreFault.Changed)]
    [InlineData("a trigger with a name like SQLite's own", RestoreFault.Changed)]
    [InlineData("a search table dropped", RestoreFault.Damaged)]
    [InlineData("a format of tables that nobody knows", RestoreFault.Damaged)]
    [InlineData("something behind its end", RestoreFault.Damaged)]
    [InlineData("a zeroed page", RestoreFault.Damaged)]
    [InlineData("a scribbled page", RestoreFault.Damaged)]
    [InlineData("a row that breaks a rule", RestoreFault.Damaged)]
    [InlineData("rows that refer to nothing", RestoreFault.LooseRows)]
    [InlineData("a log left beside it", RestoreFault.HasLog)]
    [InlineData("a journal left beside it", RestoreFault.HasLog)]
    [InlineData("other page size", RestoreFault.Damaged)]
    [InlineData("huge", RestoreFault.TooLarge)]
    [InlineData("sealed, no passphrase", RestoreFault.NeedsPassphrase)]
    [InlineData("sealed, wrong passphrase", RestoreFault.WrongPassphrase)]
    [InlineData("sealed and cut", RestoreFault.WrongPassphrase)]
    [InlineData("sealed rubbish", RestoreFault.NoBackup)]
    public void Bad_file_is_refused_by_its_name_and_the_live_data_is_untouched(string what, RestoreFault fault)
    {
        var passphrase = Make(what);
        var (before, files) = (_vault.Street.Database.Dump(), Files());

        Assert.Equal(fault, Assert.Throws<NotRestoredException>(() => _vault.Restorer.Restore(_file, passphrase)).Fault);

        Assert.Equal(before, _vault.Street.Database.Dump());
        Assert.Equal(files, Files());
    }

    /// <returns>The passphrase that is typed.</returns>
    private string? Make(string what)
    {
        switch (what)
        {
            case "not there": File.Delete(_file); break;
            case "a folder": File.Delete(_file); Directory.CreateDirectory(_file); break;
            case "a link": File.Move(_file, _file + ".real"); File.CreateSymbolicLink(_file, _file + ".real"); break;
            case "empty": File.WriteAllBytes(_file, []); break;
            case "text": File.WriteAllText(_file, string.Concat(Enumerable.Repeat("Dear diary,\n", 900))); break;
            case "a picture": File.WriteAllBytes(_file, [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, .. new byte[5000]]); break;
            case "only its head": Cut(_ => 100); break;
            case "cut in half": Cut(length => length / 2); break;
            case "cut by a page": Cut(length => length - 4096); break;
            case "another program's": Change("PRAGMA application_id = 7"); break;
            case "SQLite without a table": File.Delete(_file); Change("CREATE TABLE recipe (name TEXT)"); break;
            case "this program's number and another's tables": File.Delete(_file); Change($"PRAGMA application_id = {RecordsFile.ApplicationId}; CREATE TABLE recipe (name TEXT)"); break;
            case "newer": Change("INSERT INTO migration (name, applied_at) VALUES ('9999-newer.sql', '2026-11-25T10:00:00.000Z')"); break;
            case "tables made by another text": Change("UPDATE migration SET sum = 'other'"); break;
            case "a table dropped": Change("DROP TABLE feel"); break;
            case "a table more": Change("CREATE TABLE recipe (name TEXT)"); break;
            case "a column more": Change("ALTER TABLE client ADD COLUMN recipe TEXT"); break;
            case "an index dropped": Change("DROP INDEX account_by_name"); break;
            case "a view more": Change("CREATE VIEW recipe AS SELECT name FROM client"); break;
            case "a trigger of its own": Change("CREATE TRIGGER recipe AFTER INSERT ON audit BEGIN UPDATE client SET name = 'Nobody'; END"); break;
            case "a trigger with a name like SQLite's own":
                Change("PRAGMA writable_schema = ON; INSERT INTO sqlite_schema VALUES ('trigger', 'sqlite_recipe', 'client', 0, 'CREATE TRIGGER sqlite_recipe AFTER UPDATE ON client BEGIN DELETE FROM audit; END')");
                break;
            case "a search table dropped": Change("PRAGMA writable_schema = ON; DELETE FROM sqlite_schema WHERE name = 'search_config'"); break;
            case "a format of tables that nobody knows": using (var file = new FileStream(_file, FileMode.Open) { Position = 47 }) file.WriteByte(9); break;
            case "something behind its end": File.AppendAllText(_file, "Dear diary,\n"); break;
            case "a zeroed page": Overwrite("client", 0); break;
            case "a scribbled page": Overwrite("racket", 0x5A); break;
            case "a row that breaks a rule": Change("PRAGMA ignore_check_constraints = ON; UPDATE client SET name = ''"); break;
            case "rows that refer to nothing": Change("PRAGMA foreign_keys = OFF; UPDATE player SET client_id = 99"); break;
            case "a log left beside it": File.WriteAllBytes(_file + "-wal", [1]); break;
            case "a journal left beside it": File.WriteAllBytes(_file + "-journal", [1]); break;
            case "other page size": Change("PRAGMA page_size = 8192; VACUUM"); break;
            case "huge": using (var file = new FileStream(_file, FileMode.Open)) file.SetLength(Incoming.Most + 1); break;
            case "sealed, no passphrase": Seal("herons and otters", File.ReadAllBytes(_file)); break;
            case "sealed, wrong passphrase": Seal("herons and otters", File.ReadAllBytes(_file)); return "otters and herons";
            case "sealed and cut": Seal("herons and otters", File.ReadAllBytes(_file)); Cut(length => length - 1); return "herons and otters";
            case "sealed rubbish": Seal("herons and otters", new byte[5000]); return "herons and otters";
            default: throw new ArgumentOutOfRangeException(nameof(what), what, "Not in the table.");
        }
        return null;
    }

    private void Cut(Func<long, long> kept)
    {
        using var file = new FileStream(_file, FileMode.Open);
        file.SetLength(kept(file.Length));
    }

    private void Overwrite(string table, byte with)
    {
        long page;
        using (var connection = Open())
            page = connection.ExecuteScalar<long>("SELECT rootpage FROM sqlite_schema WHERE name = @table", new { table });
        using var file = new FileStream(_file, FileMode.Open) { Position = (page - 1) * 4096 };
        file.Write(Enumerable.Repeat(with, 4096).ToArray());
    }

    private void Seal(string passphrase, byte[] plain)
    {
        using var target = File.Create(_file);
        SealedFile.Seal(new MemoryStream(plain), target, SealKey.Of(passphrase));
    }

    private void Change(string sql)
    {
        using var connection = Open();
        connection.Execute(sql);
    }

    private SqliteConnection Open()
    {
        var connection = new SqliteConnection($"Data Source={_file};Pooling=False");
        connection.Open();
        return connection;
    }

    private List<string> Files() => [.. Directory.EnumerateFiles(_vault.Street.Folder.Root, "*", SearchOption.AllDirectories).Where(f => !f.EndsWith("-shm", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
}
