using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Audit;
using TagPage.Records.Storage;

namespace TagPage.Records.StringingLists;

/// <summary>Something that stands on what a list brought, so that it cannot be taken back.</summary>
/// <param name="Table">Whose rows stand on it; of a record that was changed, its own.</param>
/// <param name="IsChange">A record of the list was changed.</param>
/// <param name="Rows">How many.</param>
/// <param name="On">The first of the list's records that it stands on.</param>
public sealed record StandsOnIt(string Table, bool IsChange, int Rows, IReadOnlyList<StandsOnIt.Record> On)
{
    /// <param name="Kind">Job, racket, player, client or string.</param>
    /// <param name="Id">Its own.</param>
    /// <param name="Name">The player’s of a racket; empty for a job.</param>
    /// <param name="Number">The ticket’s, or the racket’s within its player; 0 for others.</param>
    public sealed record Record(string Kind, long Id, string Name, long Number);
}

/// <summary>A list of which something is in use.</summary>
public sealed record ListInUse(IReadOnlyList<StandsOnIt> By) : Refusal;

/// <summary>
/// Takes a whole list back while nothing stands on it: nothing that refers to its records, and no change of them. Every reference the
/// schema knows is looked at, so that a new table counts by itself. In the background, some records at a time.
/// </summary>
public sealed class TakeBackStore(Database database, TimeProvider clock)
{
    private const int AtOnce = 200, Named = 5;

    /// <summary>The order in which they can go.</summary>
    private static readonly string[] Kinds = ["job", "racket", "player", "client", "string_kind", "client_phone", "client_mail"];

    public Outcome Begin(Who who, long list) => database.WriteAsOwner(who, c =>
        c.ExecuteScalar<string?>("SELECT state FROM stringing_list WHERE id = @list", new { list }) is not ("In" or "Held") ? new Outcome.Absent()
        : Kinds.SelectMany(kind => Stands(c, list, kind, null)).ToList() is { Count: > 0 } by ? new Outcome.Refused(new ListInUse(by))
        : Leave(c, who, list));

    private Outcome.Done Leave(SqliteConnection connection, Who who, long list)
    {
        connection.Execute("UPDATE stringing_list SET state = 'Leaving' WHERE id = @list", new { list });
        AuditStore.Note(connection, AuditEvent.ListTakenBack, $"list {list}", clock.GetUtcNow(), who.Account ?? "");
        return new Outcome.Done(list);
    }

    /// <summary>What stands on it now.</summary>
    public IReadOnlyList<StandsOnIt> Stands(long list) => database.Read(c => Kinds.SelectMany(kind => Stands(c, list, kind, null)).ToList());

    /// <summary>Deletes the next records of a list that is leaving; held where something stands on them by now, back where none is left.</summary>
    internal void Step(long list) => database.Write(c =>
    {
        foreach (var kind in Kinds)
        {
            var ids = c.Query<long>(NextSql, new { list, kind, AtOnce }).AsList();
            if (ids.Count == 0)
                continue;
            if (Stands(c, list, kind, ids).Count > 0)
                c.Execute("UPDATE stringing_list SET state = 'Held' WHERE id = @list", new { list });
            else
                Delete(c, list, kind, ids);
            return;
        }
        c.Execute("UPDATE stringing_list SET state = 'Back', ended_at = @Now WHERE id = @list", new { list, Now = clock.GetUtcNow() });
    });

    private const string NextSql = "SELECT record_id FROM stringing_list_record WHERE list_id = @list AND kind = @kind ORDER BY record_id LIMIT @AtOnce";

    /// <param name="connection">To be read from.</param>
    /// <param name="list">Whose records.</param>
    /// <param name="kind">Of which table.</param>
    /// <param name="ids">Only of these; null for all.</param>
    private static List<StandsOnIt> Stands(SqliteConnection connection, long list, string kind, IReadOnlyList<long>? ids)
    {
        var (table, values) = (kind.StartsWith("client", StringComparison.Ordinal) ? "client" : kind, new { list, kind, ids = ids is null ? null : JsonSerializer.Serialize(ids) });
        var found = new List<StandsOnIt>();
        void Note(string on, bool isChange, List<long> records)
        {
            if (records.Count > 0)
                found.Add(new StandsOnIt(on, isChange, records.Count, Names(connection, table, records.Distinct().Take(Named))));
        }
        Note(table, true, connection.Query<long>(ChangedSql(table), values).AsList());
        if (kind == table)
            foreach (var (child, column) in connection.Query<(string, string)>(ReferencesSql, new { table }).AsList())
                Note(child, false, connection.Query<long>(RefersSql(child, column), values).AsList());
        return found;
    }

    private static List<StandsOnIt.Record> Names(SqliteConnection connection, string table, IEnumerable<long> ids) =>
        [.. connection.Query<(long Id, string Name, long Number)>(NamesSql(table), new { ids = JsonSerializer.Serialize(ids) }).Select(r => new StandsOnIt.Record(table, r.Id, r.Name, r.Number))];

    private static string NamesSql(string table) => table switch
    {
        "job" => "SELECT id, '', ticket FROM job WHERE id IN (SELECT value FROM json_each(@ids)) ORDER BY ticket",
        "racket" => "SELECT r.id, p.name, r.number FROM racket r JOIN player p ON p.id = r.player_id WHERE r.id IN (SELECT value FROM json_each(@ids)) ORDER BY r.id",
        _ => $"SELECT id, name, 0 FROM {table} WHERE id IN (SELECT value FROM json_each(@ids)) ORDER BY id",
    };

    private const string ReferencesSql = """
        SELECT t.name, f."from"
        FROM sqlite_schema t
        JOIN pragma_foreign_key_list(t.name) f
        WHERE t.type = 'table' AND f."table" = @table
        ORDER BY t.name, f."from"
        """;

    private const string Records = """
        stringing_list_record m WHERE m.list_id = @list AND m.kind = @kind AND (@ids IS NULL OR m.record_id IN (SELECT value FROM json_each(@ids)))
        """;

    // Names come from the schema, never from a request. A label that was made carries the job's number.
    private static string ChangedSql(string table) => $"""
        SELECT m.id FROM (SELECT m.record_id AS id, m.version FROM {Records}) m JOIN {table} x ON x.id = m.id
        WHERE x.version <> m.version{(table == "job" ? " OR x.label_date IS NOT NULL" : "")}
        """;

    private static string RefersSql(string child, string column) => $"""
        SELECT m.id FROM (SELECT m.record_id AS id FROM {Records}) m JOIN "{child}" x ON x."{column}" = m.id WHERE {Counts(child)}
        """;

    // What the list itself brought goes with it; so do what its jobs took from the stock, and who worked on a ticket: nobody can remove
    // that, and what they did counts by itself.
    private static string Counts(string child) => child switch
    {
        "player" or "racket" or "job" or "charge" or "charge_change" or "payment" or "payment_share" =>
            $"NOT EXISTS (SELECT 1 FROM stringing_list_record o WHERE o.kind = '{child}' AND o.record_id = x.id AND o.list_id = @list)",
        "job_deed" => "false",
        "stock_move" => "x.kind <> 'Used' OR x.made_by <> 'Program'",
        _ => "true",
    };

    private void Delete(SqliteConnection connection, long list, string kind, List<long> ids)
    {
        var values = new { list, kind, ids = JsonSerializer.Serialize(ids), payments = JsonSerializer.Serialize(kind == "job" ? connection.Query<long>(PaymentsSql, new { ids = JsonSerializer.Serialize(ids) }) : []), Now = clock.GetUtcNow(), By = Who.Program.Name };
        connection.Execute(kind switch
        {
            "job" => JobsSql,
            "client_phone" => "UPDATE client SET phone = NULL, version = version + 1 WHERE id IN (SELECT value FROM json_each(@ids))",
            "client_mail" => "UPDATE client SET mail = NULL, version = version + 1 WHERE id IN (SELECT value FROM json_each(@ids))",
            _ => $"DELETE FROM {kind} WHERE id IN (SELECT value FROM json_each(@ids))",
        }, values);
        connection.Execute("DELETE FROM stringing_list_record WHERE list_id = @list AND kind = @kind AND record_id IN (SELECT value FROM json_each(@ids))", values);
        // Whoever had both filled in was changed once, and changes once more.
        if (kind == "client_phone")
            connection.Execute("UPDATE stringing_list_record SET version = version + 1 WHERE list_id = @list AND kind = 'client_mail' AND record_id IN (SELECT value FROM json_each(@ids))", values);
    }

    private const string PaymentsSql = "SELECT DISTINCT payment_id FROM payment_share WHERE job_id IN (SELECT value FROM json_each(@ids))";

    // What was laid against the jobs was said by the list to have been paid; its numbers are kept until all of it is gone.
    private const string JobsSql = """
        INSERT INTO stock_move (string_id, kind, centimetres, note, made_at, made_by)
        SELECT string_id, 'Used', -SUM(centimetres), 'A list was taken back.', @Now, @By
        FROM stock_move
        WHERE job_id IN (SELECT value FROM json_each(@ids))
        GROUP BY string_id
        HAVING SUM(centimetres) <> 0;
        DELETE FROM stringing_list_record WHERE kind = 'payment_share' AND record_id IN (SELECT id FROM payment_share WHERE job_id IN (SELECT value FROM json_each(@ids)));
        DELETE FROM payment_share WHERE job_id IN (SELECT value FROM json_each(@ids));
        DELETE FROM payment WHERE id IN (SELECT value FROM json_each(@payments)) AND NOT EXISTS (SELECT 1 FROM payment_share s WHERE s.payment_id = payment.id);
        DELETE FROM stringing_list_record WHERE kind = 'payment' AND record_id IN (SELECT value FROM json_each(@payments));
        DELETE FROM stringing_list_record WHERE kind = 'charge_change' AND record_id IN (SELECT id FROM charge_change WHERE job_id IN (SELECT value FROM json_each(@ids)));
        DELETE FROM charge_change WHERE job_id IN (SELECT value FROM json_each(@ids));
        DELETE FROM job WHERE id IN (SELECT value FROM json_each(@ids));
        """;
}
