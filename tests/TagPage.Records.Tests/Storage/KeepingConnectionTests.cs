using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Storage;

public sealed class KeepingConnectionTests : IDisposable
{
    /// <summary>SQLITE_STMTSTATUS_REPREPARE, https://www.sqlite.org/c3ref/c_stmtstatus_counter.html.</summary>
    private const int TimesPlannedAnew = 5;

    private readonly KeepingConnection _connection = new("Data Source=:memory:");

    public KeepingConnectionTests()
    {
        _connection.Open();
        _connection.Execute("CREATE TABLE racket (id INTEGER PRIMARY KEY, name TEXT UNIQUE)");
        Add("Loop");
    }

    public void Dispose() => _connection.Dispose();

    [Fact]
    public void Statement_is_prepared_once_and_asked_again_with_other_values()
    {
        Assert.Equal("Loop", Name(1));
        var kept = _connection.Kept;
        Add("Smash");

        Assert.Equal("Smash", Name(2));
        Assert.Null(Name(3));
        Assert.Equal("Loop", Name(1));
        Assert.Equal(kept, _connection.Kept);
    }

    [Fact]
    public void Memory_is_not_counted_under_a_lock_that_all_connections_share() => Assert.Equal(0, raw.sqlite3_memory_used());

    [Fact]
    public void Statement_keeps_its_plan_whatever_number_of_rows_is_asked_for()
    {
        raw.sqlite3_prepare_v2(_connection.Handle, "SELECT name FROM racket ORDER BY id LIMIT @most", out var statement);
        using (statement)
        {
            foreach (var most in new[] { 1, 2, 3 })
            {
                raw.sqlite3_bind_int(statement, 1, most);
                Assert.Equal(raw.SQLITE_ROW, raw.sqlite3_step(statement));
                raw.sqlite3_reset(statement);
            }

            Assert.Equal(0, raw.sqlite3_stmt_status(statement, TimesPlannedAnew, 0));
        }
    }

    [Fact]
    public void Value_of_one_question_is_not_left_for_the_next()
    {
        const string sql = "SELECT COUNT(*) FROM racket WHERE id = @id";
        Assert.Equal(1, _connection.ExecuteScalar<int>(sql, new { id = 1 }));

        var missing = Assert.Throws<InvalidOperationException>(() => _connection.ExecuteScalar<int>(sql));
        Assert.Contains("@id", missing.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Same_question_may_be_asked_while_its_answer_is_still_being_read()
    {
        Add("Smash");
        const string sql = "SELECT id FROM racket ORDER BY id";
        var pairs = new List<(int, int)>();
        foreach (var outer in _connection.Query<int>(sql, buffered: false))
            pairs.AddRange(_connection.Query<int>(sql, buffered: false).Select(inner => (outer, inner)));

        Assert.Equal([(1, 1), (1, 2), (2, 1), (2, 2)], pairs);
    }

    [Fact]
    public void Question_that_was_left_half_read_starts_anew_and_holds_nothing_up()
    {
        Add("Smash");
        const string sql = "SELECT id FROM racket ORDER BY id";
        Assert.Equal(1, _connection.Query<int>(sql, buffered: false).First());

        Assert.Equal([1, 2], _connection.Query<int>(sql));
        _connection.Execute("DROP TABLE racket");
    }

    [Fact]
    public void Table_that_changed_meanwhile_answers_as_it_is_now()
    {
        const string sql = "SELECT * FROM racket";
        Assert.Equal(2, Columns(sql));

        _connection.Execute("ALTER TABLE racket ADD COLUMN note TEXT");

        Assert.Equal(3, Columns(sql));
    }

    [Fact]
    public void Write_that_was_refused_can_be_tried_again()
    {
        Assert.Throws<SqliteException>(() => Add("Loop"));
        Add("Smash");

        Assert.Throws<SqliteException>(() => Add("Loop"));
        Assert.Equal(["Loop", "Smash"], _connection.Query<string>("SELECT name FROM racket ORDER BY id"));
    }

    [Fact]
    public void Pragma_works_each_time()
    {
        foreach (var on in new[] { true, false, true })
        {
            _connection.Execute($"PRAGMA foreign_keys = {(on ? "ON" : "OFF")}");
            Assert.Equal(on, _connection.ExecuteScalar<bool>("PRAGMA foreign_keys"));
        }
    }

    [Fact]
    public void Texts_that_never_come_again_do_not_fill_the_memory()
    {
        for (var i = 0; i < 3 * KeepingConnection.Most; i++)
        {
            Assert.Equal(i, _connection.ExecuteScalar<int>($"SELECT {i}"));
            Assert.InRange(_connection.Kept, 1, KeepingConnection.Most);
        }
    }

    private void Add(string name) => _connection.Execute("INSERT INTO racket (name) VALUES (@name)", new { name });

    private string? Name(int id) => _connection.QuerySingleOrDefault<string>("SELECT name FROM racket WHERE id = @id", new { id });

    private int Columns(string sql)
    {
        using var reader = _connection.ExecuteReader(sql);
        return reader.FieldCount;
    }
}
