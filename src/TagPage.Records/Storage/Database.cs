using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// The only place that opens the database. Reads run in parallel; writes run one at a time, each in a transaction
/// begun IMMEDIATE, so that it is complete or not there at all.
/// </summary>
public sealed class Database : IDisposable
{
    /// <summary>Older SQLite versions have a race in WAL mode that can corrupt a database with two connections.</summary>
    private static readonly Version OldestSafe = new(3, 51, 3);

    private readonly Lock _lane = new();
    private readonly string _connectionString;
    private readonly WriteConnection _writer;
    private ReadConnections _readers;
    private ChangeWatch? _watch;
    private int _opened;

    public Database(DataFolder folder)
    {
        SqliteMemory.CountNothing();
        TypeHandlers.Register();
        _connectionString = new SqliteConnectionStringBuilder
        {
            DataSource = folder.DatabaseFile,
            ForeignKeys = true,
            DefaultTimeout = 5,
            Pooling = false,
        }.ToString();
        (_writer, _readers) = (new(OpenToWrite), new(OpenToRead));
        RefuseUnsafeSqlite();
        RecordsFile.Prepare(folder);
    }

    /// <summary>What this process's committed writes changed.</summary>
    public Changes Changes { get; } = new();

    /// <summary>What belongs to every write: runs in its transaction, right before it is committed.</summary>
    public Action<SqliteConnection>? BeforeCommit { get; set; }

    /// <summary>How many connections were opened since the start: few, unless somebody keeps borrowed ones.</summary>
    internal int Opened => _opened;

    public T Read<T>(Func<SqliteConnection, T> work) => Volatile.Read(ref _readers).Lend(work);

    /// <summary>Several reads that go together: all of them see the records of one moment, whatever is written meanwhile.</summary>
    public T ReadTogether<T>(Func<T> reads) =>
        Read(connection =>
        {
            if (!connection.IsAtRest())
                return reads();
            connection.Execute("BEGIN DEFERRED");
            try
            {
                return reads();
            }
            finally
            {
                connection.Execute("COMMIT");
            }
        });

    /// <summary>Reads what is on the disk now: a connection that is open may still know pages as they were.</summary>
    public T ReadFromDisk<T>(Func<SqliteConnection, T> work)
    {
        using var connection = OpenToRead();
        return work(connection);
    }

    /// <summary>Runs <paramref name="work"/> in a transaction; an exception rolls all of it back and goes on to the caller.</summary>
    public T Write<T>(Func<SqliteConnection, T> work)
    {
        if (_lane.IsHeldByCurrentThread)
            throw new InvalidOperationException("A write inside a write would end the outer one's transaction.");
        lock (_lane)
        {
            try
            {
                return _writer.InTransaction(connection =>
                {
                    var result = work(connection);
                    BeforeCommit?.Invoke(connection);
                    return result;
                });
            }
            finally
            {
                Publish();
            }
        }
    }

    public void Write(Action<SqliteConnection> work) =>
        Write(connection =>
        {
            work(connection);
            return 0;
        });

    /// <summary>
    /// secure_delete cleans the database's pages; what the log of changes still holds of what was deleted goes with this.
    /// </summary>
    public void EmptyLog()
    {
        lock (_lane)
            _writer.Execute("PRAGMA wal_checkpoint(TRUNCATE)");
    }

    /// <summary>A consistent copy of the live database, made through SQLite itself.</summary>
    public void CopyTo(string file)
    {
        using var target = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        target.Open();
        Read(source =>
        {
            source.BackupDatabase(target);
            return 0;
        });
        RecordsFile.MarkAsCopy(target);
        DataFolder.CloseToOthers(file);
    }

    /// <summary>Lets nobody write while <paramref name="work"/> runs, which may read but not write either.</summary>
    internal void Hold(Action work)
    {
        lock (_lane)
            work();
    }

    /// <summary>
    /// Replaces everything by what is in another database, in one transaction of SQLite's: whoever reads meanwhile reads the old
    /// or the new, and so does the next program where this one is ended. Throws and changes nothing where that fails.
    /// </summary>
    internal void ReplaceWith(string file)
    {
        lock (_lane)
        {
            using var source = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
            source.Open();
            _writer.TakeAllOf(source);
        }
        EmptyLog();
        Dispose();
    }

    /// <summary>
    /// Writes a few pages, removes them again and commits, as every save has to. Throws as a save would; does nothing while
    /// somebody else is writing, since that shows that writing works.
    /// </summary>
    public void TryWriting()
    {
        if (!_lane.TryEnter())
            return;
        try
        {
            _writer.InTransaction(c => c.Execute(TryWritingSql));
        }
        finally
        {
            _lane.Exit();
        }
    }

    private const string TryWritingSql = """
        INSERT INTO write_probe (bytes) VALUES (zeroblob(16384));
        DELETE FROM write_probe;
        """;

    /// <summary>Closes the database's files. Whoever reads or writes after this opens them again.</summary>
    public void Dispose()
    {
        Interlocked.Exchange(ref _readers, new(OpenToRead)).Dispose();
        lock (_lane)
        {
            _writer.Dispose();
            Publish();
        }
    }

    /// <summary>Without the connection that watched, anything may have changed.</summary>
    private void Publish()
    {
        if (_writer.IsOpen && _watch is { } watch)
        {
            watch.Publish();
            return;
        }
        Changes.TouchAll();
        Changes.Publish();
    }

    private KeepingConnection OpenToWrite()
    {
        var connection = Open();
        _watch = new ChangeWatch(connection, Changes);
        return connection;
    }

    /// <summary>A read that changes anything is refused by SQLite.</summary>
    private KeepingConnection OpenToRead()
    {
        var connection = Open();
        connection.Execute("PRAGMA query_only = ON");
        return connection;
    }

    private KeepingConnection Open()
    {
        var connection = new KeepingConnection(_connectionString);
        try
        {
            connection.Open();
            connection.Execute(Pragmas);
            Interlocked.Increment(ref _opened);
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

    private static void RefuseUnsafeSqlite()
    {
        using var connection = new SqliteConnection();
        var version = Version.Parse(connection.ServerVersion);
        if (version < OldestSafe)
            throw new CannotStartException($"SQLite {version} can lose data in WAL mode; TagPage needs {OldestSafe} or newer.");
    }
}
