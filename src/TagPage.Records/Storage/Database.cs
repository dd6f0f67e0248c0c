using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// The only place that opens the database. Reads run beside each other; writes pass one lane, each a transaction
/// begun IMMEDIATE, so it is whole or not there at all.
/// </summary>
public sealed class Database : IDisposable
{
    /// <summary>Older SQLite versions have a race in WAL mode that can corrupt a database with two connections.</summary>
    private static readonly Version OldestSafe = new(3, 51, 3);

    private readonly Lock _lane = new();
    private readonly string _connectionString;
    private long _generation;

    public Database(DataFolder folder)
    {
        TypeHandlers.Register();
        _connectionString = new SqliteConnectionStringBuilder
        {
            DataSource = folder.DatabaseFile,
            ForeignKeys = true,
            DefaultTimeout = 5,
        }.ToString();
        RefuseUnsafeSqlite();
        RecordsFile.Prepare(folder);
    }

    /// <summary>Grows with every committed write of this process; what was read under an older number may be stale.</summary>
    public long Generation => Interlocked.Read(ref _generation);

    /// <summary>What belongs to every write: runs in its transaction, right before it is committed.</summary>
    public Action<SqliteConnection>? BeforeCommit { get; set; }

    public T Read<T>(Func<SqliteConnection, T> work)
    {
        using var connection = Open();
        return work(connection);
    }

    /// <summary>Runs <paramref name="work"/> in a transaction; an exception rolls all of it back and goes on to the caller.</summary>
    public T Write<T>(Func<SqliteConnection, T> work)
    {
        lock (_lane)
        {
            using var connection = Open();
            connection.Execute("BEGIN IMMEDIATE");
            try
            {
                var result = work(connection);
                BeforeCommit?.Invoke(connection);
                connection.Execute("COMMIT");
                return result;
            }
            catch
            {
                RollBack(connection);
                throw;
            }
            finally
            {
                Interlocked.Increment(ref _generation);
            }
        }
    }

    public void Write(Action<SqliteConnection> work) =>
        Write(connection =>
        {
            work(connection);
            return 0;
        });

    /// <summary>A consistent copy of the live database, made through SQLite itself.</summary>
    public void CopyTo(string file)
    {
        using var source = Open();
        using var target = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        target.Open();
        source.BackupDatabase(target);
        RecordsFile.MarkAsCopy(target);
        DataFolder.CloseToOthers(file);
    }

    /// <summary>
    /// Writes a few pages, takes them out again and commits, as every save has to. Throws as a save would; does nothing
    /// while somebody else writes, who shows that it can be done.
    /// </summary>
    public void TryWriting()
    {
        if (!_lane.TryEnter())
            return;
        try
        {
            using var connection = Open();
            connection.Execute(TryWritingSql);
        }
        finally
        {
            _lane.Exit();
        }
    }

    private const string TryWritingSql = """
        BEGIN IMMEDIATE;
        INSERT INTO write_probe (bytes) VALUES (zeroblob(16384));
        DELETE FROM write_probe;
        COMMIT;
        """;

    /// <summary>Lets go of the database's files.</summary>
    public void Dispose()
    {
        using var connection = new SqliteConnection(_connectionString);
        SqliteConnection.ClearPool(connection);
    }

    private SqliteConnection Open()
    {
        var connection = new SqliteConnection(_connectionString);
        try
        {
            connection.Open();
            connection.Execute(Pragmas);
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private const string Pragmas = """
        PRAGMA busy_timeout = 5000;
        PRAGMA journal_mode = WAL;
        PRAGMA synchronous = FULL;
        PRAGMA secure_delete = ON;
        PRAGMA trusted_schema = OFF;
        PRAGMA journal_size_limit = 67108864;
        """;

    /// <summary>A full disk or an I/O error may already have ended the transaction; then there is nothing left to roll back.</summary>
    private static void RollBack(SqliteConnection connection)
    {
        try
        {
            connection.Execute("ROLLBACK");
        }
        catch (SqliteException)
        {
            SqliteConnection.ClearPool(connection);
        }
    }

    private static void RefuseUnsafeSqlite()
    {
        using var connection = new SqliteConnection();
        var version = Version.Parse(connection.ServerVersion);
        if (version < OldestSafe)
            throw new CannotStartException($"SQLite {version} can lose data in WAL mode; TagPage needs {OldestSafe} or newer.");
    }
}
