using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>Reminders to many households, one after the other. What is still to do is kept in a table, so that a restart carries on where it stopped. The shop begins and stops them.</summary>
public sealed class BatchStore(Database database, BatchReminder household, ShopClock clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public DateTimeOffset MadeAt { get; init; }
        public DateTimeOffset? StoppedAt { get; init; }
        public IReadOnlyList<Line> Lines { get; init; } = [];

        public int Waiting => Lines.Count(l => l.State == "Waiting");

        public bool IsRunning => StoppedAt is null && Waiting > 0;
    }

    public sealed record Line
    {
        public long ClientId { get; init; }
        public string Client { get; init; } = "";
        public string State { get; init; } = "";
        public LeftOut? Why { get; init; }
        public long? ReminderId { get; init; }
    }

    /// <summary>Done carries the batch's number. Nothing is sent yet.</summary>
    public Outcome Make(Who who, string formKey, IReadOnlyCollection<long> clients) => database.WriteOnceAsOwner(who, formKey, clock.Now, c =>
    {
        if (clients.Count == 0)
            return new Outcome.Refused(new NobodyChosen());
        var id = c.ExecuteScalar<long>("INSERT INTO reminder_batch (made_at) VALUES (@Now) RETURNING id", new { clock.Now });
        c.Execute("INSERT INTO reminder_batch_client (batch_id, client_id) SELECT @id, id FROM client WHERE id IN @clients", new { id, clients });
        return new Outcome.Done(id);
    });

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>("SELECT id, made_at, stopped_at FROM reminder_batch WHERE id = @id", new { id }) is { } row
        ? row with { Lines = [.. c.Query<Line>(LinesSql, new { id })] }
        : null);

    private const string LinesSql = """
        SELECT b.client_id, c.name AS client, b.state, NULLIF(b.why, '') AS why, b.reminder_id
        FROM reminder_batch_client b
        JOIN client c ON c.id = b.client_id
        WHERE b.batch_id = @id
        ORDER BY c.name_key, c.id
        """;

    /// <summary>The batch that is under way, or null.</summary>
    public long? Running() => AllWaiting() is [var oldest, ..] ? oldest.Id : null;

    /// <summary>A batch that is under way.</summary>
    public sealed record Waiting
    {
        public long Id { get; init; }

        /// <summary>How many still wait in it.</summary>
        public int Households { get; init; }
    }

    /// <summary>The oldest first.</summary>
    public IReadOnlyList<Waiting> AllWaiting() => database.Read(c => c.Query<Waiting>(WaitingSql).ToList());

    private const string WaitingSql = """
        SELECT b.id, COUNT(*) AS households
        FROM reminder_batch b
        JOIN reminder_batch_client c ON c.batch_id = b.id AND c.state = 'Waiting'
        WHERE b.stopped_at IS NULL
        GROUP BY b.id
        ORDER BY b.id
        """;

    /// <summary>SQL: the batch under way in which <c>client c</c> waits, or null.</summary>
    internal const string WaitsIn = """
        (SELECT MIN(w.batch_id) FROM reminder_batch_client w JOIN reminder_batch b ON b.id = w.batch_id
         WHERE w.client_id = c.id AND w.state = 'Waiting' AND b.stopped_at IS NULL)
        """;

    /// <summary>Those still waiting are left out; what has gone out cannot be called back.</summary>
    public Outcome Stop(Who who, long id) => database.WriteAsOwner(who, c =>
        c.Execute("UPDATE reminder_batch SET stopped_at = COALESCE(stopped_at, @Now) WHERE id = @id", new { id, clock.Now }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    /// <summary>One household, all of it or nothing: its reminder, its mail and that it is done. False if nobody is waiting.</summary>
    public bool Step() => database.Write(c =>
    {
        if (c.QueryFirstOrDefault<(long Batch, long Client)?>(NextSql) is not var (batch, client))
            return false;
        var (reminder, why) = household.Remind(c, client);
        Mark(c, batch, client, reminder, why);
        return true;
    });

    private const string NextSql = """
        SELECT c.batch_id, c.client_id
        FROM reminder_batch_client c
        JOIN reminder_batch b ON b.id = c.batch_id
        WHERE c.state = 'Waiting' AND b.stopped_at IS NULL
        ORDER BY c.batch_id, c.client_id
        LIMIT 1
        """;

    private static void Mark(SqliteConnection connection, long batch, long client, long? reminder, LeftOut? why) => connection.Execute(MarkSql, new
    {
        batch,
        client,
        reminder,
        Why = why?.ToString() ?? "",
        State = reminder is null ? "Skipped" : "Sent",
    });

    private const string MarkSql = """
        UPDATE reminder_batch_client SET state = @State, why = @Why, reminder_id = @reminder WHERE batch_id = @batch AND client_id = @client
        """;
}
