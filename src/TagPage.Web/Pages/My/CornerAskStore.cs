using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.My;

/// <summary>By what somebody asks for a link.</summary>
public enum AskWay { Mail, Phone }

/// <summary>Links that were asked for: written down alike for everybody, then answered for those on file and forgotten.</summary>
public sealed class CornerAskStore(Database database, CornerLinkStore links, TimeProvider clock)
{
    /// <summary>More than this many wait for nothing but a flood; the oldest count.</summary>
    private const int Most = 500;

    private sealed record Row
    {
        public long Id { get; init; }
        public AskWay Way { get; init; }
        public string Reach { get; init; } = "";
        public DateTimeOffset AskedAt { get; init; }
    }

    public void Add(AskWay way, string reach) => database.Write(c =>
        c.Execute(AddSql, new { Way = way.ToString(), reach, Now = clock.GetUtcNow(), Most }));

    private const string AddSql = """
        INSERT INTO corner_ask (way, reach, asked_at) SELECT @Way, @reach, @Now WHERE (SELECT COUNT(*) FROM corner_ask) < @Most
        """;

    /// <summary>Answers all that wait.</summary>
    public void AnswerAll()
    {
        while (database.Read(c => c.QueryFirstOrDefault<Row>("SELECT id, way, reach, asked_at FROM corner_ask ORDER BY id LIMIT 1")) is { } ask)
            database.Write(c => Answer(c, ask));
    }

    private void Answer(SqliteConnection connection, Row ask)
    {
        connection.Execute("DELETE FROM corner_ask WHERE id = @Id", ask);
        foreach (var client in connection.Query<long>(ask.Way == AskWay.Mail ? ByMailSql : ByPhoneSql, new { ask.Reach }).ToList())
            if (ask.Way == AskWay.Mail)
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
