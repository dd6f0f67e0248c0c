using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Import;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;

namespace TagPage.Records.StringingLists;

/// <summary>Writes lists, some lines at a time, each time all of it or nothing. What is done no longer waits, so that a restart carries on where it stopped.</summary>
public sealed class ListWriteStore(Database database, TimeProvider clock)
{
    /// <summary>Lines that one transaction writes: others wait no longer for it than for a form.</summary>
    private const int AtOnce = 200;

    private sealed record Waiting(long Household, long Position, string Line);

    /// <summary>Writes the next lines of a list that is coming; with none left it is in.</summary>
    internal void Step(long list) => database.Write(c =>
    {
        var waiting = c.Query<(long Household, long Position, string Line)>(NextSql, new { list, AtOnce }).Select(r => new Waiting(r.Household, r.Position, r.Line)).ToList();
        if (waiting.Count == 0)
            c.Execute("UPDATE stringing_list SET state = 'In', ended_at = @Now WHERE id = @list AND state = 'Coming'", new { list, Now = clock.GetUtcNow() });
        else
            Add(c, list, waiting);
    });

    private const string NextSql = "SELECT household, position, line FROM stringing_list_row WHERE list_id = @list ORDER BY household, position LIMIT @AtOnce";

    private void Add(SqliteConnection connection, long list, List<Waiting> waiting)
    {
        var lines = waiting.Select(w => JsonSerializer.Deserialize<StringingLine>(w.Line)!).ToList();
        var found = OnFile(connection, lines);
        var made = ListBatch.Of(lines, found);
        var before = Last(connection);
        var fills = Fills(connection, made);
        ImportRowStore.Add(connection, made.Batch, clock.GetUtcNow());
        connection.Execute(KeepSql, before.Select(last => new { list, Kind = last.Key, After = last.Value }));
        foreach (var (kind, ids) in fills)
            connection.Execute(KeepFillSql, new { list, kind, ids = JsonSerializer.Serialize(ids) });
        connection.Execute(DoneSql, waiting.Select(w => new { list, w.Household, w.Position }));
        connection.Execute("UPDATE stringing_list SET missed = missed + @Missed, there = there + @There WHERE id = @list", new { list, made.Missed, made.There });
        CarryOn(connection, list, lines[^1], made);
    }

    // Tables that are numbered as they grow: what is beyond their last number now will be the list's.
    private static readonly string[] Kinds = ["client", "player", "string_kind", "racket", "job", "charge", "charge_change", "payment", "payment_share"];

    private static Dictionary<string, long> Last(SqliteConnection connection) =>
        Kinds.ToDictionary(kind => kind, kind => connection.ExecuteScalar<long>($"SELECT COALESCE(MAX(id), 0) FROM {kind}"));

    private static readonly string KeepSql = string.Join('\n', Kinds.Select(kind =>
        $"INSERT INTO stringing_list_record (kind, record_id, list_id) SELECT '{kind}', id, @list FROM {kind} WHERE @Kind = '{kind}' AND id > @After;"));

    private static IReadOnlyList<(string Kind, List<long> Ids)> Fills(SqliteConnection connection, ListBatch made)
    {
        var (phones, mails) = (made.Batch.Clients.Rows.Where(r => r is { IsOnFile: true, Phone: not null }).Select(r => r.Id), made.Batch.Clients.Rows.Where(r => r is { IsOnFile: true, Mail: not null }).Select(r => r.Id));
        return
        [
            ("client_phone", connection.Query<long>("SELECT id FROM client WHERE phone IS NULL AND id IN (SELECT value FROM json_each(@ids))", new { ids = JsonSerializer.Serialize(phones) }).AsList()),
            ("client_mail", connection.Query<long>("SELECT id FROM client WHERE mail IS NULL AND id IN (SELECT value FROM json_each(@ids))", new { ids = JsonSerializer.Serialize(mails) }).AsList()),
        ];
    }

    private const string KeepFillSql = """
        INSERT INTO stringing_list_record (kind, record_id, list_id, version)
        SELECT @kind, id, @list, version FROM client WHERE id IN (SELECT value FROM json_each(@ids))
        ON CONFLICT DO NOTHING
        """;

    private const string DoneSql = "DELETE FROM stringing_list_row WHERE list_id = @list AND household = @Household AND position = @Position";

    private static ListBatch.OnFile OnFile(SqliteConnection connection, List<StringingLine> lines)
    {
        var clients = new { ids = JsonSerializer.Serialize(lines.Select(l => l.ClientId).OfType<long>().Distinct()) };
        return new ListBatch.OnFile(
            connection.Query<long>("SELECT id FROM client WHERE id IN (SELECT value FROM json_each(@ids))", clients).ToHashSet(),
            connection.Query<(long, long, string)>("SELECT id, client_id, name FROM player WHERE client_id IN (SELECT value FROM json_each(@ids)) ORDER BY id", clients).AsList(),
            connection.Query<(long, long, int)>(RacketsSql, clients).AsList(),
            ImportRowStore.Catalogue(connection),
            connection.Query<(long, DateOnly, long, long, decimal, decimal, string)>(JobsSql, clients).ToHashSet(),
            connection.ExecuteScalar<int>($"SELECT {RequestedJob.NextTicket}"),
            connection.Query<int>(TakenSql, new { tickets = JsonSerializer.Serialize(lines.Select(l => l.Ticket).OfType<int>()) }).ToHashSet());
    }

    private const string RacketsSql = """
        SELECT r.id, r.player_id, r.number
        FROM racket r
        JOIN player p ON p.id = r.player_id
        WHERE p.client_id IN (SELECT value FROM json_each(@ids))
        """;

    private const string JobsSql = """
        SELECT j.racket_id, j.strung_on, j.mains_id, j.crosses_id, j.mains_tension, j.crosses_tension, j.tension_unit
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE p.client_id IN (SELECT value FROM json_each(@ids)) AND j.strung_on IS NOT NULL
        """;

    private const string TakenSql = """
        SELECT value FROM json_each(@tickets) t
        WHERE EXISTS (SELECT 1 FROM job WHERE ticket = t.value) OR EXISTS (SELECT 1 FROM past_job WHERE ticket = t.value)
           OR EXISTS (SELECT 1 FROM deleted_ticket WHERE ticket = t.value)
        """;

    /// <summary>A household that is not finished goes on with the records it has now.</summary>
    private static void CarryOn(SqliteConnection connection, long list, StringingLine last, ListBatch made)
    {
        if (last.ClientId is null && made.ClientOf(last) is { } client)
            connection.Execute(CarryClientSql, new { list, last.Household, client });
        foreach (var (key, racket) in made.NewRacketsOf(last.Household))
            connection.Execute(CarryRacketSql, new { list, last.Household, key, racket });
    }

    private const string CarryClientSql = "UPDATE stringing_list_row SET line = json_set(line, '$.ClientId', @client) WHERE list_id = @list AND household = @Household";

    private const string CarryRacketSql = """
        UPDATE stringing_list_row SET line = json_set(line, '$.RacketId', @racket)
        WHERE list_id = @list AND household = @Household AND json_extract(line, '$.RacketKey') = @key AND json_extract(line, '$.RacketId') IS NULL
        """;
}
