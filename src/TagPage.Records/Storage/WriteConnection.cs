using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>The one connection that writes, opened with the first write and used by one writer at a time.</summary>
internal sealed class WriteConnection(Func<SqliteConnection> open) : IDisposable
{
    // Result codes of SQLite after which a connection is as good as before, https://www.sqlite.org/rescode.html
    private const int Busy = 5, Full = 13, Constraint = 19;

    private SqliteConnection? _open;

    /// <summary>Runs <paramref name="work"/> in a transaction begun IMMEDIATE.</summary>
    public T InTransaction<T>(Func<SqliteConnection, T> work)
    {
        try
        {
            Open.Execute("BEGIN IMMEDIATE");
            var result = work(Open);
            Open.Execute("COMMIT");
            return result;
        }
        catch (Exception e)
        {
            if (!RollBack() || e is SqliteException { SqliteErrorCode: not (Busy or Full or Constraint) })
                Dispose();
            throw;
        }
    }

    public void TakeAllOf(SqliteConnection source) => source.BackupDatabase(Open);

    public void Execute(string sql) => Open.Execute(sql);

    public bool IsOpen => _open is not null;

    public void Dispose()
    {
        _open?.Dispose();
        _open = null;
    }

    private SqliteConnection Open => _open ??= open();

    /// <summary>A full disk or an I/O error may already have ended the transaction; then there is nothing left to roll back.</summary>
    private bool RollBack()
    {
        try
        {
            if (_open?.IsAtRest() == false)
                _open.Execute("ROLLBACK");
            return true;
        }
        catch (SqliteException)
        {
            return false;
        }
    }
}
