using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// Connections for reading, opened once and lent again and again, the one used last first; a read within a read uses the
/// same connection, so that a request needs one for all its reads. None comes back with a transaction open, so that idle
/// ones hold nothing up.
/// </summary>
internal sealed class ReadConnections(Func<SqliteConnection> open) : IDisposable
{
    /// <summary>More than these are needed only in a rush, and closed after it.</summary>
    private const int Kept = 8;

    private readonly Stack<SqliteConnection> _resting = new();
    private readonly ThreadLocal<SqliteConnection?> _lent = new();
    private bool _isClosed;

    public T Lend<T>(Func<SqliteConnection, T> work) => _lent.Value is { } outer ? work(outer) : LendOne(work);

    /// <summary>Closes those that rest now, and those that are lent as they come back.</summary>
    public void Dispose()
    {
        lock (_resting)
        {
            _isClosed = true;
            while (_resting.TryPop(out var connection))
                connection.Dispose();
        }
    }

    private T LendOne<T>(Func<SqliteConnection, T> work)
    {
        var connection = Take();
        _lent.Value = connection;
        var isSound = false;
        try
        {
            var result = work(connection);
            isSound = connection.IsAtRest();
            return result;
        }
        finally
        {
            _lent.Value = null;
            if (!isSound || !PutBack(connection))
                connection.Dispose();
        }
    }

    private SqliteConnection Take()
    {
        lock (_resting)
        {
            if (_resting.TryPop(out var connection))
                return connection;
        }
        return open();
    }

    private bool PutBack(SqliteConnection connection)
    {
        lock (_resting)
        {
            if (_isClosed || _resting.Count == Kept)
                return false;
            _resting.Push(connection);
            return true;
        }
    }
}
