using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Storage;

/// <summary>Connections are opened once and lent; none may carry anything from one who used it to the next.</summary>
public sealed class ConnectionTests : IDisposable
{
    private const int GeneralFault = 1, ReadOnly = 8;

    private static readonly string[] Named =
        ["foreign_keys", "synchronous", "secure_delete", "trusted_schema", "busy_timeout", "journal_mode", "journal_size_limit", "query_only"];

    private readonly EmptyDatabase _home = new();

    public ConnectionTests()
    {
        _home.Migrator(Migration.Embedded).Run();
        Database.Dispose();
    }

    public void Dispose() => _home.Dispose();

    private Database Database => _home.Database;

    [Fact]
    public void Reads_one_after_another_share_one_connection_and_writes_another()
    {
        var before = Database.Opened;

        Assert.Same(Database.Read(c => c), Database.Read(c => c));
        Assert.Equal(1, Database.Opened - before);

        Assert.Same(Database.Write(c => c), Database.Write(c => c));
        Database.TryWriting();
        Database.EmptyLog();
        Assert.Equal(2, Database.Opened - before);
    }

    [Fact]
    public void Every_connection_keeps_to_the_rules_of_the_house()
    {
        Assert.Equal(Rules(queryOnly: 1), Database.Read(RulesOf));
        Assert.Equal(Rules(queryOnly: 1), Database.Read(RulesOf)); // lent again
        Assert.Equal(Rules(queryOnly: 0), Database.Write(RulesOf));
        Assert.Equal(Rules(queryOnly: 0), Database.Write(RulesOf));
        Database.Dispose();
        Assert.Equal(Rules(queryOnly: 1), Database.Read(RulesOf)); // opened anew
        Assert.Equal(Rules(queryOnly: 0), Database.Write(RulesOf));
    }

    [Fact]
    public void Read_within_a_read_goes_on_with_its_connection_and_one_within_a_write_does_not()
    {
        Assert.True(Database.Read(outer => Database.Read(inner => outer == inner)));
        Assert.True(Database.Write(outer => Database.Read(inner => outer != inner)));
    }

    [Fact]
    public async Task Readers_at_the_same_time_have_one_each() =>
        Assert.Equal(5, (await Rush(5)).Distinct().Count());

    [Fact]
    public async Task No_more_than_eight_are_kept_after_a_rush()
    {
        await Rush(12);
        var before = Database.Opened;

        await Rush(12);

        Assert.Equal(4, Database.Opened - before);
    }

    [Fact]
    public void Read_that_would_change_something_is_refused()
    {
        var before = Database.Dump();

        var fault = Assert.Throws<SqliteException>(() => Database.Read(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys')")));

        Assert.Equal(ReadOnly, fault.SqliteErrorCode);
        Assert.Equal(before, Database.Dump());
    }

    [Fact]
    public void Connection_that_a_read_broke_on_is_closed()
    {
        var first = Database.Read(c => c);

        Assert.Equal(GeneralFault, Assert.Throws<SqliteException>(() => Database.Read(c => c.Execute("SELECT nothing"))).SqliteErrorCode);

        Assert.NotSame(first, Database.Read(c => c));
        Assert.Equal(System.Data.ConnectionState.Closed, first.State);
    }

    [Fact]
    public void Connection_that_a_write_broke_on_is_closed_and_the_next_write_goes_through()
    {
        var first = Database.Write(c => c);

        Assert.Throws<SqliteException>(() => Database.Write(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys'); SELECT nothing;")));

        Assert.NotSame(first, Database.Write(c => c));
        Assert.Equal(System.Data.ConnectionState.Closed, first.State);
        Assert.Equal(0, Clients());
    }

    [Fact]
    public void Write_that_broke_a_rule_of_the_records_leaves_nothing_in_the_connection_it_shares_with_the_next()
    {
        var first = Database.Write(c => c);

        Assert.Throws<SqliteException>(() => Database.Write(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys'); INSERT INTO client (name) VALUES ('');")));

        Assert.Same(first, Database.Write(c => c));
        Assert.Equal(0, Clients());
    }

    [Fact]
    public void Transaction_that_a_read_left_open_ends_with_it_and_holds_no_log_back()
    {
        var first = Database.Read(c =>
        {
            c.Execute("BEGIN; SELECT COUNT(*) FROM client;");
            return c;
        });

        Assert.NotSame(first, Database.Read(c => c));
        Database.Write(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys')"));
        Database.EmptyLog();
        Assert.Equal(0, LogLength());
    }

    [Fact]
    public async Task Resting_connections_do_not_keep_what_was_deleted_in_the_log()
    {
        Database.Write(c => c.Execute("INSERT INTO client (name, phone) VALUES ('Odalys', '+447700900123')"));
        await Rush(8);
        Database.Write(c => c.Execute("DELETE FROM client"));
        Assert.NotEqual(0, LogLength());

        Database.EmptyLog();

        Assert.Equal(0, LogLength());
    }

    [Fact]
    public void Write_is_seen_by_a_connection_that_has_read_before_it()
    {
        Assert.Equal(0, Clients());
        Database.Write(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys')"));
        Assert.Equal(1, Clients());
        Database.Write(c => c.Execute("ALTER TABLE client ADD COLUMN shoe_size INTEGER"));
        Assert.Null(Database.Read(c => c.ExecuteScalar<long?>("SELECT shoe_size FROM client")));
    }

    [Fact]
    public void Write_within_a_write_is_refused_and_the_outer_one_undone()
    {
        Assert.Throws<InvalidOperationException>(() => Database.Write(c =>
        {
            c.Execute("INSERT INTO client (name) VALUES ('Odalys')");
            Database.Write(inner => inner.Execute("INSERT INTO client (name) VALUES ('Pim')"));
        }));

        Assert.Equal(0, Clients());
    }

    [Fact]
    public void Connection_that_is_lent_while_the_files_are_let_go_is_closed_as_it_comes_back()
    {
        var lent = Database.Read(c =>
        {
            Database.Dispose();
            Assert.Equal(0, c.ExecuteScalar<long>("SELECT COUNT(*) FROM client"));
            return c;
        });

        Assert.Equal(System.Data.ConnectionState.Closed, lent.State);
        Assert.Equal(0, Clients());
    }

    [Fact]
    public async Task Many_readers_beside_a_writer_each_see_whole_writes()
    {
        var writing = Task.Run(() =>
        {
            for (var n = 0; n < 50; n++)
                Database.Write(c => c.Execute("INSERT INTO client (name) VALUES ('Odalys'), ('Pim')"));
        }, TestContext.Current.CancellationToken);
        var reading = Enumerable.Range(0, 6).Select(_ => Task.Run(() => Enumerable.Range(0, 100).Select(_ => Clients()).ToList()));

        var seen = await Task.WhenAll(reading);
        await writing;

        Assert.All(seen, counts => Assert.Equal(counts.Order(), counts));
        Assert.All(seen.SelectMany(c => c), count => Assert.Equal(0, count % 2));
        Assert.Equal(100, Clients());
    }

    /// <summary>So many at the same time: each waits in its read for the others.</summary>
    private async Task<SqliteConnection[]> Rush(int readers)
    {
        using var all = new Barrier(readers);
        return await Task.WhenAll(Enumerable.Range(0, readers).Select(_ => Task.Factory.StartNew(() => Database.Read(c =>
        {
            all.SignalAndWait();
            c.ExecuteScalar<long>("SELECT COUNT(*) FROM client");
            return c;
        }), TaskCreationOptions.LongRunning)));
    }

    private static string Rules(int queryOnly) => $"1 2 1 0 5000 wal 67108864 {queryOnly}";

    private static string RulesOf(SqliteConnection connection) => string.Join(' ', Named.Select(p => connection.ExecuteScalar<string>($"PRAGMA {p}")));

    private long Clients() => Database.Read(c => c.ExecuteScalar<long>("SELECT COUNT(*) FROM client"));

    private long LogLength() => new FileInfo(_home.Folder.DatabaseFile + "-wal").Length;
}
