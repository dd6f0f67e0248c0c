using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>The private links to clients' own pages: made by the owner or asked for, valid for a long time, withdrawn with one press.</summary>
public sealed class OwnPageLinkStore(Database database, LinkTokens keys, OutboxStore outbox, IOwnPageMails mails, TimeProvider clock)
{
    public static readonly TimeSpan GoodFor = TimeSpan.FromDays(400);

    public sealed record Row
    {
        public long Id { get; init; }
        public string Secret { get; init; } = "";
        public long ClientId { get; init; }
        public string Client { get; init; } = "";
        public string Language { get; init; } = "en";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public string MadeBy { get; init; } = "";
        public DateTimeOffset MadeAt { get; init; }
        public DateTimeOffset ExpiresAt { get; init; }
        public DateTimeOffset? RevokedAt { get; init; }
        public DateTimeOffset? MailedAt { get; init; }
    }

    /// <summary>Null for a link that was never given out, has expired or was withdrawn.</summary>
    public Row? Of(string token) =>
        LinkTokens.Claimed(token) is { } id && Get(id) is { } row && keys.Fits(token, LinkPurpose.OwnPage, row.Id, row.Secret) && IsLive(row) ? row : null;

    public bool IsLive(Row row) => row.RevokedAt is null && row.ExpiresAt > clock.GetUtcNow();

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(Columns + " WHERE l.id = @id", new { id }));

    private const string Columns = """
        SELECT l.id, l.secret, l.client_id, c.name AS client, c.language, c.phone, c.mail, l.made_by, l.made_at, l.expires_at, l.revoked_at,
               (SELECT MAX(o.made_at) FROM outbox o WHERE o.link_id = l.id AND o.state <> 'Failed') AS mailed_at
        FROM own_page_link l
        JOIN client c ON c.id = l.client_id
        """;

    /// <summary>The newest first.</summary>
    public IReadOnlyList<Row> OfClient(long client) =>
        database.Read(c => c.Query<Row>(Columns + " WHERE l.client_id = @client ORDER BY l.id DESC LIMIT 20", new { client }).ToList());

    /// <summary>A new link, which the shop gives out.</summary>
    public Outcome Make(Who who, long client) => database.WriteAsOwner(who, c =>
        Make(c, client, "Owner") is { } made ? new Outcome.Done(made) : new Outcome.Absent());

    private long? Make(SqliteConnection connection, long client, string by)
    {
        var now = clock.GetUtcNow();
        connection.Execute("DELETE FROM own_page_link WHERE client_id = @client AND expires_at <= @now", new { client, now });
        return connection.ExecuteScalar<long?>(MakeSql, new { client, by, now, Until = now + GoodFor });
    }

    private const string MakeSql = """
        INSERT INTO own_page_link (client_id, made_by, made_at, expires_at)
        SELECT id, @by, @now, @Until FROM client WHERE id = @client
        RETURNING id
        """;

    /// <summary>A new link for somebody who asked with an email address, on its way there. In the caller's transaction.</summary>
    internal void MakeAndMail(SqliteConnection connection, long client)
    {
        if (Make(connection, client, "Client") is { } id)
            QueueMail(connection, connection.QuerySingle<Row>(Columns + " WHERE l.id = @id", new { id }));
    }

    public Outcome Mail(Who who, long id) => database.WriteAsOwner(who, c =>
    {
        if (c.QuerySingleOrDefault<Row>(Columns + " WHERE l.id = @id", new { id }) is not { } row)
            return new Outcome.Absent();
        if (!IsLive(row))
            return new Outcome.Refused(new LinkOver());
        if (row.Mail is null)
            return new Outcome.Refused(new NoAddressOnFile());
        QueueMail(c, row);
        return new Outcome.Done(id);
    });

    private void QueueMail(SqliteConnection connection, Row row)
    {
        var mail = mails.Link(row);
        outbox.Queue(connection, new NewMail(MailKind.OwnPageLink, row.ClientId, mail.Subject, mail.Body) { LinkId = row.Id });
    }

    /// <summary>It no longer works, and the browsers it signed in are signed out.</summary>
    public Outcome Revoke(Who who, long id)
    {
        var now = clock.GetUtcNow();
        return database.Write<Outcome>(c =>
        {
            if (c.Execute("UPDATE own_page_link SET revoked_at = COALESCE(revoked_at, @now) WHERE id = @id AND @IsOwner", new { who.IsOwner, id, now }) == 0)
                return new Outcome.Absent();
            c.Execute("DELETE FROM own_page_session WHERE link_id = @id", new { id });
            return new Outcome.Done(id);
        });
    }
}
