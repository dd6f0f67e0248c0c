using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>Checks the database once a day, as at the start, and remembers the result.</summary>
public sealed class DatabaseCheck(Database database, TimeProvider clock, ILogger<DatabaseCheck> log)
    : PeriodicWork(TimeSpan.FromDays(1), clock, log, "The database could not be looked through; it is tried again tomorrow.", atStart: false)
{
    private volatile bool _damaged;

    public bool IsSound => !_damaged;

    /// <summary>Checks it now, as each day: as a backup is checked where damage was found before, else what takes less time.</summary>
    public void Look() => Note(Find(_damaged ? FullCheck.Finding : Finding));

    /// <summary>Checks all of it now, as a backup is checked.</summary>
    /// <returns>Whether it is sound.</returns>
    public bool LookClosely()
    {
        Note(Find(FullCheck.Finding));
        return IsSound;
    }

    private void Note(string? finding)
    {
        _damaged = finding is not null;
        if (finding is not null)
            log.LogCritical("The database is damaged ({Finding}). Stop the program and go back to a backup.", finding);
    }

    protected override void Work() => Look();

    private string? Find(Func<SqliteConnection, string?> check)
    {
        try
        {
            return database.ReadFromDisk(check);
        }
        catch (SqliteException e) when (DatabaseFault.IsDamage(e))
        {
            return e.Message;
        }
    }

    /// <summary>The first fault; null if there is none.</summary>
    internal static string? Finding(SqliteConnection connection) =>
        connection.ExecuteScalar<string>("PRAGMA quick_check(1)") is var told and not "ok" ? told : null;
}
