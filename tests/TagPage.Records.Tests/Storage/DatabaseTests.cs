using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Storage;

public sealed class DatabaseTests : IDisposable
{
    private const int Constraint = 19;

    private readonly EmptyDatabase _home = new();

    public DatabaseTests() => _home.Migrator(Migration.Embedded).Run();

    public void Dispose() => _home.Dispose();

    private Database Database => _home.Database;

    [Fact]
    public void Write_that_breaks_half_way_leaves_nothing_behind_and_the_next_one_works()
    {
        var before = Database.Dump();

        Assert.Throws<InvalidOperationException>(() => Database.Write(c =>
        {
            c.Execute("INSERT INTO client (name) VALUES ('Odalys')");
            throw new InvalidOperationException("power cut");
        }));

        Assert.Equal(before, Database.Dump());
        Database.Write(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys')"));
        Assert.Equal(1, Count());
    }

    [Fact]
    public void Write_that_the_database_itself_ended_is_not_taken_for_done()
    {
        Assert.Throws<SqliteException>(() => Database.Write(c =>
        {
            c.Execute("INSERT INTO client (name) VALUES ('Odalys')");
            c.Execute("INSERT OR ROLLBACK INTO client (name) VALUES ('')");
        }));

        Assert.Equal(0, Count());
        Database.Write(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys')"));
        Assert.Equal(1, Count());
    }

    [Fact]
    public void Reader_sees_the_whole_write_or_none_of_it()
    {
        Database.Write(c =>
        {
            c.Execute("INSERT INTO client (name) VALUES ('Odalys')");
            Assert.Equal(0, Count());
        });

        Assert.Equal(1, Count());
    }

    [Fact]
    public void Reads_that_go_together_see_one_moment_and_the_next_ones_see_what_was_written_meanwhile()
    {
        Add();

        var (first, second) = Database.ReadTogether(() =>
        {
            var before = Count();
            Task.Run(Add).Wait();
            return (before, Database.ReadTogether(Count));
        });

        Assert.Equal((1, 1), (first, second));
        Assert.Equal(2, Count());
    }

    [Fact]
    public void Reads_that_break_half_way_hold_nothing_up()
    {
        Assert.Throws<InvalidOperationException>(() => Database.ReadTogether<int>(() => throw new InvalidOperationException($"broken after {Count()}")));

        Add();
        Assert.Equal(1, Database.ReadTogether(Count));
    }

    [Fact]
    public async Task Writers_pass_one_lane_and_lose_nothing()
    {
        Database.Write(c => c.Execute("CREATE TABLE counted (n INTEGER NOT NULL) STRICT; INSERT INTO counted VALUES (0);"));

        await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() =>
        {
            for (var n = 0; n < 25; n++)
                Database.Write(c => c.Execute("UPDATE counted SET n = @next", new { next = c.ExecuteScalar<long>("SELECT n FROM counted") + 1 }));
        })));

        Assert.Equal(200, Database.Read(c => c.ExecuteScalar<long>("SELECT n FROM counted")));
    }

    [Fact]
    public void Record_cannot_point_at_nothing() =>
        Assert.Equal(Constraint, Assert.Throws<SqliteException>(() =>
            Database.Write(c => c.Execute("INSERT INTO player (client_id, name, junior) VALUES (99, 'Pim', 0)"))).SqliteErrorCode);

    [Fact]
    public void Every_table_is_strict()
    {
        var loose = Database.Read(c => c.Query<string>("""
            SELECT name FROM pragma_table_list
            WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'search%'
            """).ToList());

        Assert.Empty(loose);
    }

    [Fact]
    public void Text_is_not_taken_for_a_number() =>
        Assert.Equal(Constraint, Assert.Throws<SqliteException>(() =>
            Database.Write(c => c.Execute("INSERT INTO instrument (name, scale, version) VALUES ('Gauge', 'Hertz', 'one')"))).SqliteErrorCode);

    [Fact]
    public void What_is_deleted_is_gone_from_the_file()
    {
        const string Phone = "+447700900123";
        Database.Write(c => c.Execute("INSERT INTO client (name, phone) VALUES ('Odalys', @Phone)", new { Phone }));
        Database.Write(c => c.Execute("DELETE FROM client"));
        Database.EmptyLog();

        var copy = Path.Combine(_home.Folder.Root, "copy.db");
        Database.CopyTo(copy);

        Assert.DoesNotContain(Phone, File.ReadAllText(copy, System.Text.Encoding.Latin1), StringComparison.Ordinal);
    }

    private void Add() => Database.Write(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys')"));

    private long Count() => Database.Read(c => c.ExecuteScalar<long>("SELECT COUNT(*) FROM client"));
}
