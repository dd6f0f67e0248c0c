using Microsoft.Data.Sqlite;
using SQLitePCL;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Faults;

/// <summary>
/// Breaks the writing connection off at a step: SQLite asks at its steps whether to go on (https://www.sqlite.org/c3ref/progress_handler.html),
/// and before a commit whether it may (https://www.sqlite.org/c3ref/commit_hook.html).
/// </summary>
internal sealed class Interruption(Database database)
{
    private SqliteConnection? _armed;
    private long _at, _asked;
    private int _atCommit, _commits;

    /// <summary>Steps from when this was set to the commit that it stopped. What SQLite asks after that comes too late: it has committed.</summary>
    public long Steps { get; private set; }

    /// <summary>How often it broke something off.</summary>
    public int Times { get; private set; }

    /// <summary>From here on the step of this number is the last one.</summary>
    public void AtStep(long number)
    {
        Arm();
        (_at, _atCommit, _asked) = (number, 0, 0);
    }

    /// <summary>The commit of this number, the first being 1.</summary>
    public void AtCommit(int number = 1)
    {
        Arm();
        (_at, _atCommit, _asked, _commits) = (long.MaxValue, number, 0, 0);
    }

    public void Never() => (_at, _atCommit) = (long.MaxValue, 0);

    /// <summary>An interrupted connection is closed, and the next write opens another.</summary>
    private void Arm() => database.Write(connection =>
    {
        Never();
        if (ReferenceEquals(_armed, connection))
            return;
        raw.sqlite3_progress_handler(connection.Handle, 1, _ => Stops(++_asked == _at), null);
        raw.sqlite3_commit_hook(connection.Handle, _ => AtEnd(), null);
        _armed = connection;
    });

    private int AtEnd()
    {
        Steps = _asked;
        return Stops(++_commits == _atCommit);
    }

    private int Stops(bool here)
    {
        Times += here ? 1 : 0;
        return here ? 1 : 0;
    }
}
