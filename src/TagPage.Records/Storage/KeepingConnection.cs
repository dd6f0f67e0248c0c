using System.Data;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace TagPage.Records.Storage;

/// <summary>
/// A connection that prepares a statement once and keeps it: for most of what pages ask, preparing takes longer than running.
/// Nothing else changes: a command made by <see cref="CreateCommand"/> borrows the statement of its text while it runs.
/// </summary>
/// <remarks>Used by one thread at a time, like every connection.</remarks>
internal sealed class KeepingConnection(string connectionString) : SqliteConnection(connectionString)
{
    /// <summary>More than all pages ask that are open all day; each takes SQLite some ten kilobytes.</summary>
    internal const int Most = 200;

    private readonly Dictionary<string, SqliteCommand> _resting = new(StringComparer.Ordinal);

    static KeepingConnection() => SqliteMemory.CountNothing();

    internal int Kept => _resting.Count;

    public override void Open()
    {
        base.Open();
        KeepPlans();
    }

    public override SqliteCommand CreateCommand() => new Borrower(this) { Connection = this, CommandTimeout = DefaultTimeout, Transaction = Transaction };

    /// <summary>
    /// SQLite's query planner stability guarantee: without it a statement is planned anew whenever a value it looked at while planning,
    /// such as a LIMIT's, is given again (https://www.sqlite.org/c3ref/c_dbconfig_defensive.html).
    /// </summary>
    private void KeepPlans() => SqliteException.ThrowExceptionForRC(raw.sqlite3_db_config(Handle, raw.SQLITE_DBCONFIG_ENABLE_QPSG, 1, out _), Handle);

    private SqliteCommand Take(string text)
    {
        if (_resting.Remove(text, out var statement))
            return statement;
        statement = base.CreateCommand();
        statement.CommandText = text;
        return statement;
    }

    private void PutBack(SqliteCommand statement)
    {
        statement.Parameters.Clear();
        if (_resting.Count == Most)
            DropAll();
        if (!_resting.TryAdd(statement.CommandText, statement))
            statement.Dispose();
    }

    private void DropAll()
    {
        foreach (var statement in _resting.Values)
            statement.Dispose();
        _resting.Clear();
    }

    private sealed class Borrower(KeepingConnection connection) : SqliteCommand
    {
        private SqliteCommand? _statement;
        private SqliteDataReader? _reader;

        public override SqliteDataReader ExecuteReader(CommandBehavior behavior)
        {
            GiveBack();
            if (!IsKept(CommandText))
                return base.ExecuteReader(behavior);
            var statement = connection.Take(CommandText);
            try
            {
                foreach (SqliteParameter parameter in Parameters)
                    statement.Parameters.Add(parameter);
                _reader = statement.ExecuteReader(behavior);
                _statement = statement;
                return _reader;
            }
            catch
            {
                statement.Dispose();
                throw;
            }
        }

        protected override void Dispose(bool disposing)
        {
            if (disposing)
                GiveBack();
            base.Dispose(disposing);
        }

        private void GiveBack()
        {
            _reader?.Dispose();
            if (_statement is not null && connection.State == System.Data.ConnectionState.Open)
                connection.PutBack(_statement);
            (_reader, _statement) = (null, null);
        }

        /// <summary>A PRAGMA may do its work while it is prepared (https://www.sqlite.org/pragma.html), so it is prepared each time; so is what is asked once.</summary>
        private static bool IsKept(string text) =>
            text.AsSpan().TrimStart() is var start && (Begins(start, "SELECT") || Begins(start, "WITH") || Begins(start, "INSERT") || Begins(start, "UPDATE") || Begins(start, "DELETE"));

        private static bool Begins(ReadOnlySpan<char> text, string word) => text.StartsWith(word, StringComparison.OrdinalIgnoreCase);
    }
}
