using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Storage;

public sealed class MigratorTests : IDisposable
{
    private static readonly Migration First = new("0001-first.sql", "CREATE TABLE one (n INTEGER NOT NULL) STRICT; INSERT INTO one VALUES (1);");
    private static readonly Migration Second = new("0002-second.sql", "CREATE TABLE two (n INTEGER NOT NULL) STRICT; INSERT INTO two SELECT n FROM one;");

    private readonly EmptyDatabase _home = new();

    public void Dispose() => _home.Dispose();

    [Fact]
    public void Migration_is_applied_once()
    {
        _home.Migrator(First).Run();
        _home.Migrator(First).Run();

        Assert.Equal(1, _home.Database.Read(c => c.ExecuteScalar<long>("SELECT COUNT(*) FROM one")));
        Assert.True(_home.Migrator(First).IsCurrent);
        Assert.Empty(Copies());
    }

    [Fact]
    public void Copy_is_made_before_a_second_migration_and_holds_what_was_there()
    {
        _home.Migrator(First).Run();
        var before = _home.Database.Dump();
        Assert.False(_home.Migrator(First, Second).IsCurrent);

        _home.Migrator(First, Second).Run();

        var copy = Assert.Single(Copies());
        Assert.Equal("20261125-100000-before-0002-second.db", Path.GetFileName(copy));
        Assert.Equal(1, _home.Database.Read(c => c.ExecuteScalar<long>("SELECT n FROM two")));
        Assert.Equal(before, DumpOf(copy));
    }

    [Theory]
    [InlineData("CREATE TABLE two (n INTEGER NOT NULL) STRICT; INSERT INTO nowhere VALUES (1);", "no such table: nowhere")]
    // The library takes this for a statement with rows, and keeps to itself what fails after one.
    [InlineData("ALTER TABLE one ADD COLUMN two TEXT; INSERT INTO nowhere VALUES (1);", "no such table: nowhere")]
    [InlineData("SELECT n FROM one; UPDATE one SET n = NULL;", "NOT NULL constraint failed: one.n")]
    public void Migration_that_breaks_half_way_leaves_the_schema_as_it_was(string sql, string reason)
    {
        _home.Migrator(First).Run();
        var before = _home.Database.Dump();
        var broken = new Migration("0002-broken.sql", sql);

        var refused = Assert.Throws<CannotStartException>(() => _home.Migrator(First, broken).Run());

        Assert.Equal($"This version could not change the records as it needs to (0002-broken.sql: {reason}). Nothing was changed; start the version you had before.", refused.Message);

        Assert.Equal(before, _home.Database.Dump());
        _home.Migrator(First, Second).Run();
        Assert.True(_home.Migrator(First, Second).IsCurrent);
    }

    /// <summary>As a machine does that starts what ended again and again, every ten minutes; each start puts a backup away first.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(600)]
    [InlineData(86_400)]
    public void Forty_starts_that_fail_pile_up_no_backups_and_keep_those_made_before(int secondsBetween)
    {
        _home.Migrator(First).Run();
        var nightly = Path.Combine(_home.Folder.Backups, "20261124-030000-nightly.db");
        File.WriteAllBytes(nightly, [1]);
        var broken = new Migration("0002-broken.sql", "CREATE TABLE two (n INTEGER NOT NULL) STRICT; INSERT INTO nowhere VALUES (1);");
        var before = _home.Database.Dump();

        for (var start = 0; start < 40; start++)
        {
            Assert.Throws<CannotStartException>(() => _home.Migrator(First, broken).Run());
            _home.Clock.Advance(TimeSpan.FromSeconds(secondsBetween));
        }

        Assert.InRange(Copies().Length, 2, 1 + BackupPlan.OfOneReason);
        Assert.Contains(nightly, Copies());
        Assert.All(Copies().Except([nightly]), copy => Assert.Equal(before, DumpOf(copy)));
    }

    [Fact]
    public void Forty_starts_whose_backup_cannot_be_finished_leave_nothing_behind()
    {
        _home.Migrator(First).Run();
        _home.Database.Write(c => c.Execute("PRAGMA ignore_check_constraints = ON; CREATE TABLE odd (n INTEGER CHECK (n > 0)); INSERT INTO odd VALUES (-1);"));

        for (var start = 0; start < 40; start++)
            Assert.Throws<UnsoundBackupException>(() => _home.Migrator(First, Second).Run());

        Assert.Empty(Copies());
        Assert.False(_home.Migrator(First, Second).IsCurrent);
    }

    [Fact]
    public void Database_of_a_newer_program_is_refused_and_left_alone()
    {
        _home.Migrator(First, Second).Run();
        var before = _home.Database.Dump();

        var refusal = Assert.Throws<CannotStartException>(() => _home.Migrator(First).Run());

        Assert.Contains("made by a newer TagPage", refusal.Message, StringComparison.Ordinal);
        Assert.False(_home.Migrator(First).IsCurrent);
        Assert.Equal(before, _home.Database.Dump());
    }

    [Fact]
    public void Database_whose_tables_were_made_by_another_text_is_refused_and_left_alone()
    {
        _home.Migrator(First).Run();
        var before = _home.Database.Dump();
        var edited = First with { Sql = First.Sql.Replace("one", "uno", StringComparison.Ordinal) };

        var refusal = Assert.Throws<CannotStartException>(() => _home.Migrator(edited, Second).Run());

        Assert.Contains("made by another version of TagPage", refusal.Message, StringComparison.Ordinal);
        Assert.False(_home.Migrator(edited).IsCurrent);
        Assert.Equal(before, _home.Database.Dump());
        Assert.Empty(Copies());
    }

    [Fact]
    public void Line_endings_of_a_checkout_make_no_other_text()
    {
        _home.Migrator(First with { Sql = First.Sql.Replace("; ", ";\n", StringComparison.Ordinal) }).Run();

        _home.Migrator(First with { Sql = First.Sql.Replace("; ", ";\r\n", StringComparison.Ordinal) }).Run();
    }

    [Fact]
    public void Programs_own_migrations_build_a_sound_database()
    {
        _home.Migrator(Migration.Embedded).Run();

        Assert.Equal("ok", _home.Database.Read(c => c.ExecuteScalar<string>("PRAGMA integrity_check")));
        Assert.Empty(_home.Database.Read(c => c.Query("PRAGMA foreign_key_check").ToList()));
    }

    /// <summary>Without it, deleting a row reads the whole table that may refer to it.</summary>
    [Fact]
    public void Every_reference_between_tables_has_an_index()
    {
        _home.Migrator(Migration.Embedded).Run();

        Assert.Empty(_home.Database.Read(c => c.Query<string>(WithoutIndexSql).ToList()));
        Assert.NotEqual(0, _home.Database.Read(c => c.ExecuteScalar<long>("SELECT COUNT(*) FROM sqlite_schema t, pragma_foreign_key_list(t.name)")));
    }

    // An index serves where the column leads it, and where it has all rows but those that refer to nothing.
    private const string WithoutIndexSql = """
        SELECT t.name || '.' || f."from"
        FROM sqlite_schema t, pragma_foreign_key_list(t.name) f
        WHERE t.type = 'table' AND NOT EXISTS (
          SELECT 1
          FROM pragma_index_list(t.name) i, pragma_index_info(i.name) c
          LEFT JOIN sqlite_schema s ON s.name = i.name
          WHERE c.seqno = 0 AND c.name = f."from" AND (i.partial = 0 OR s.sql LIKE '%WHERE ' || f."from" || ' IS NOT NULL'))
          AND NOT EXISTS (SELECT 1 FROM pragma_table_info(t.name) k WHERE k.pk = 1 AND k.name = f."from")
        ORDER BY 1
        """;

    private string[] Copies() => Directory.GetFiles(_home.Folder.Backups);

    private static string DumpOf(string copy)
    {
        var folder = new DataFolder(copy + ".opened");
        File.Copy(copy, folder.DatabaseFile);
        return new Database(folder).Dump();
    }
}
