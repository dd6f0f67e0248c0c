using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>What a client has asked the owner for.</summary>
public enum RequestKind { Link, Payer, OwnClient, PassedOn, Forget }

/// <summary>What clients have asked for on their own page and the owner has not ticked off.</summary>
public sealed class ClientRequestStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public long ClientId { get; init; }
        public string Client { get; init; } = "";
        public RequestKind Kind { get; init; }
        public string Words { get; init; } = "";
        public DateTimeOffset MadeAt { get; init; }
    }

    /// <summary>Requests on a page of the list.</summary>
    public const int APage = 40;

    /// <summary>One page of what is open, the oldest first.</summary>
    /// <param name="Rows">What stands on it.</param>
    /// <param name="All">How many are open in all.</param>
    /// <param name="Next">The number that the next page comes after; null on the last one.</param>
    public sealed record Part(IReadOnlyList<Row> Rows, int All, long? Next);

    /// <param name="after">The number of the last one on the page before; 0 for the first page.</param>
    /// <param name="most">How many to show.</param>
    public Part Open(long after = 0, int most = APage) => database.Read(c =>
    {
        var rows = c.Query<Row>(OpenSql, new { after, Most = most + 1 }).ToList();
        var all = c.ExecuteScalar<int>("SELECT COUNT(*) FROM client_request WHERE done_at IS NULL");
        return new Part([.. rows.Take(most)], all, rows.Count > most ? rows[most - 1].Id : null);
    });

    private const string OpenSql = """
        SELECT r.id, r.client_id, c.name AS client, r.kind, r.words, r.made_at
        FROM client_request r
        JOIN client c ON c.id = r.client_id
        WHERE r.done_at IS NULL AND r.id > @after
        ORDER BY r.id
        LIMIT @Most
        """;

    /// <summary>In the caller's transaction.</summary>
    internal static void Add(SqliteConnection connection, long client, RequestKind kind, string words, DateTimeOffset now) =>
        connection.Execute(AddSql, new { client, Kind = kind.ToString(), words, now });

    private const string AddSql = "INSERT INTO client_request (client_id, kind, words, made_at) VALUES (@client, @Kind, @words, @now)";

    /// <summary>Ticks one off, which is the shop's to do.</summary>
    public Outcome Done(Who who, long id) => database.Write<Outcome>(c =>
        c.Execute(DoneSql, new { who.IsOwner, id, Now = clock.GetUtcNow() }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    private const string DoneSql = "UPDATE client_request SET done_at = COALESCE(done_at, @Now) WHERE id = @id AND @IsOwner";
}
