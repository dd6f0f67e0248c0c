using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>By what somebody asks for a link.</summary>
public enum LinkRequestWay { Mail, Phone }

/// <summary>Links that were asked for: written down alike for everybody, then answered for those on file and forgotten.</summary>
public sealed class LinkRequestStore(Database database, OwnPageLinkStore links, TimeProvider clock)
{
    /// <summary>More than this many wait for nothing but a flood; the oldest count.</summary>
    private const int Most = 500;

    private sealed record Row
    {
        public long Id { get; init; }
        public LinkRequestWay Way { get; init; }
        public string Reach { get; init; } = "";
        public DateTimeOffset AskedAt { get; init; }
    }

    public void Add(LinkRequestWay way, string reach) => database.Write(c =>
        c.Execute(AddSql, new { Way = way.ToString(), reach, Now = clock.GetUtcNow(), Most }));

    private const string AddSql = """
        INSERT INTO link_request (way, reach, asked_at) SELECT @Way, @reach, @Now WHERE (SELECT COUNT(*) FROM link_request) < @Most
        """;

    /// <summary>Answers all that wait.</summary>
    public void AnswerAll()
    {
        while (database.Read(c => c.QueryFirstOrDefault<Row>("SELECT id, way, reach, asked_at FROM link_request ORDER BY id LIMIT 1")) is { } ask)
            database.Write(c => Answer(c, ask));
    }

    private void Answer(SqliteConnection connection, Row ask)
    {
        connection.Execute("DELETE FROM link_request WHERE id = @Id", ask);
        foreach (var client in connection.Query<long>(ask.Way == LinkRequestWay.Mail ? ByMailSql : ByPhoneSql, new { ask.Reach }).ToList())
            if (ask.Way == LinkRequestWay.Mail)
                links.MakeAndMail(connection, client);
            else
                connection.Execute(RequestSql, new { client, ask.AskedAt });
    }

    private const string ByMailSql = "SELECT id FROM client WHERE mail = @Reach COLLATE NOCASE ORDER BY id LIMIT 5";

    private const string ByPhoneSql = "SELECT id FROM client WHERE phone = @Reach ORDER BY id LIMIT 5";

    private const string RequestSql = """
        INSERT INTO client_request (client_id, kind, asked_at)
        SELECT @client, 'Link', @AskedAt
        WHERE NOT EXISTS (SELECT 1 FROM client_request WHERE client_id = @client AND kind = 'Link' AND done_at IS NULL)
        """;
}
