using Dapper;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>
/// The one answer that goes to an address a stranger typed: by the person who looks after the racket, once. Void when
/// the finder's words are wiped.
/// </summary>
public sealed class FinderReplyStore(Database database, OutboxStore outbox, IFinderMails mails, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Secret { get; init; } = "";
        public long ClientId { get; init; }
        public DateTimeOffset At { get; init; }
        public string Message { get; init; } = "";
        public string Contact { get; init; } = "";
        public string Language { get; init; } = "en";
        public DateTimeOffset? AnsweredAt { get; init; }
    }

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = """
        SELECT id, secret, client_id, at, message, contact, language, answered_at
        FROM found_event
        WHERE id = @id AND kind = 'Message' AND contact <> '' AND wiped_at IS NULL
        """;

    /// <summary>By the household whose racket it is, as the finder's message came to them.</summary>
    public Outcome Send(Who who, Row to, string answer) => database.Write<Outcome>(c =>
    {
        if (c.ExecuteScalar<bool?>(IsAnsweredSql, new { to.Id, who.ClientId }) is not { } answered)
            return new Outcome.Absent();
        if (answered)
            return new Outcome.Refused(new FinderAnswered());
        c.Execute(AnswerSql, new { to.Id, Now = clock.GetUtcNow() });
        var mail = mails.Answer(to.Language, answer);
        outbox.Queue(c, new NewMail(MailKind.FinderAnswer, to.ClientId, mail.Subject, mail.Body) { EventId = to.Id });
        return new Outcome.Done(to.Id);
    });

    private const string IsAnsweredSql = """
        SELECT answered_at IS NOT NULL
        FROM found_event
        WHERE id = @Id AND client_id = @ClientId AND kind = 'Message' AND contact <> '' AND wiped_at IS NULL
        """;

    private const string AnswerSql = "UPDATE found_event SET answered_at = @Now WHERE id = @Id";
}
