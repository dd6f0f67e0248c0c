using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// Tells <see cref="Changes"/> what a connection writes, by triggers that live as long as the connection: no way of
/// writing gets past them, and deletions by reference are seen too.
/// </summary>
internal sealed class ChangeWatch
{
    /// <summary>SQL that touches the players a row belongs to, the row being called {0}.</summary>
    internal static readonly IReadOnlyDictionary<string, string> OfPlayers = new Dictionary<string, string>
    {
        ["client"] = "SELECT touch(id) FROM player WHERE client_id = {0}.id",
        ["player"] = "SELECT touch({0}.id)",
        ["pause"] = "SELECT touch({0}.player_id)",
        ["racket"] = "SELECT touch({0}.player_id)",
        ["spec"] = OfRacket,
        ["logged_hours"] = OfRacket,
        ["job"] = OfRacket,
        ["tag"] = OfRacket,
        ["job_request"] = OfJob,
        ["feel"] = OfJob,
        ["reading"] = OfJob,
        ["visit_work"] = OfJob,
    };

    /// <summary>SQL that touches the event's desk a row belongs to, the row being called {0}.</summary>
    internal static readonly IReadOnlyDictionary<string, string> OfDesks = new Dictionary<string, string>
    {
        ["event"] = "SELECT touch_desk({0}.id)",
        ["event_technician"] = "SELECT touch_desk({0}.event_id)",
        ["event_hours"] = "SELECT touch_desk(event_id) FROM event_technician WHERE id = {0}.technician_id",
        ["event_entry"] = "SELECT touch_desk({0}.event_id)",
        ["job"] = "SELECT touch_desk(event_id) FROM event_entry WHERE job_id = {0}.id",
    };

    /// <summary>What every page depends on.</summary>
    internal static readonly IReadOnlyList<string> OfAll = ["shop", "chosen_address", "opening_span", "closed_days", "message", "care_guide", "string_kind", "instrument"];

    private const string OfRacket = "SELECT touch(player_id) FROM racket WHERE id = {0}.racket_id";

    private const string OfJob = "SELECT touch(r.player_id) FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.id = {0}.job_id";

    private readonly SqliteConnection _connection;
    private readonly Changes _changes;
    private bool _isOn;

    public ChangeWatch(SqliteConnection connection, Changes changes)
    {
        (_connection, _changes) = (connection, changes);
        connection.CreateFunction("touch", (long player) =>
        {
            changes.Touch(player);
            return 0;
        });
        connection.CreateFunction("touch_all", () =>
        {
            changes.TouchAll();
            return 0;
        });
        connection.CreateFunction("touch_desk", (long eventId) =>
        {
            changes.TouchDesk(eventId);
            return 0;
        });
        Begin();
    }

    /// <summary>After a transaction. Until the tables are there to be watched, anything may have changed.</summary>
    public void Publish()
    {
        if (!_isOn)
        {
            _changes.TouchAll();
            Begin();
        }
        _changes.Publish();
    }

    private void Begin()
    {
        if (_connection.ExecuteScalar<long>("SELECT COUNT(*) FROM main.sqlite_schema WHERE type = 'table' AND name = 'racket'") == 0)
            return;
        foreach (var (table, players) in OfPlayers)
            _connection.Execute(Triggers("watch", table, row => string.Format(null, players, row)));
        foreach (var table in OfAll)
            _connection.Execute(Triggers("watch", table, _ => "SELECT touch_all()"));
        foreach (var (table, desks) in OfDesks)
            _connection.Execute(Triggers("desk", table, row => string.Format(null, desks, row)));
        _isOn = true;
    }

    private static string Triggers(string name, string table, Func<string, string> tell) => $"""
        CREATE TEMP TRIGGER {name}_{table}_new AFTER INSERT ON main.{table} BEGIN {tell("new")}; END;
        CREATE TEMP TRIGGER {name}_{table}_again AFTER UPDATE ON main.{table} BEGIN {tell("old")}; {tell("new")}; END;
        CREATE TEMP TRIGGER {name}_{table}_gone AFTER DELETE ON main.{table} BEGIN {tell("old")}; END;
        """;
}
