using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>What somebody typed to ask for a link.</summary>
public enum LinkRequestWay { Mail, Phone }

/// <summary>Requests for links: recorded in the same way for everybody, then answered for those on file and deleted.</summary>
public sealed class LinkRequestStore(Database database, OwnPageLinkStore links, TimeProvider clock)
{
    /// <summary>More than this many can only be a flood; the oldest count.</summary>
    private const int Most = 500;

    private sealed record Row
    {
        public long Id { get; init; }
        public LinkRequestWay Way { get; init; }
        public string Contact { get; init; } = "";
        public DateTimeOffset MadeAt { get; init; }
    }

    public void Add(LinkRequestWay way, string contact) => database.Write(c =>
        c.Execute(AddSql, new { Way = way.ToString(), contact, Now = clock.GetUtcNow(), Most }));

    private const string AddSql = """
        INSERT INTO link_request (way, contact, made_at) SELECT @Way, @contact, @Now WHERE (SELECT COUNT(*) FROM link_request) < @Most
        """;

    /// <summary>Answers all that wait.</summary>
    public void AnswerAll()
    {
        while (database.Read(c => c.QueryFirstOrDefault<Row>("SELECT id, way, contact, made_at FROM link_request ORDER BY id LIMIT 1")) is { } ask)
            database.Write(c => Answer(c, ask));
    }

    private void Answer(SqliteConnection connection, Row ask)
    {
        connection.Execute("DELETE FROM link_request WHERE id = @Id", ask);
        foreach (var client in connection.Query<long>(ask.Way == LinkRequestWay.Mail ? ByMailSql : ByPhoneSql, new { ask.Contact }).ToList())
            if (ask.Way == LinkRequestWay.Mail)
                links.MakeAndMail(connection, client);
            else
                connection.Execute(RequestSql, new { client, ask.MadeAt });
    }

    private const string ByMailSql = "SELECT id FROM client WHERE mail = @Contact COLLATE NOCASE ORDER BY id LIMIT 5";

    private const string ByPhoneSql = "SELECT id FROM client WHERE phone = @Contact ORDER BY id LIMIT 5";

    private const string RequestSql = """
        INSERT INTO client_request (client_id, kind, made_at)
        SELECT @client, 'Link', @MadeAt
        WHERE NOT EXISTS (SELECT 1 FROM client_request WHERE client_id = @client AND kind = 'Link' AND done_at IS NULL)
        """;
}
