using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Audit;
using TagPage.Records.Clients;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>
/// Takes a finder's press: whether it is agreed to, repeated or one too many is judged in the transaction that logs it
/// and queues the notice.
/// </summary>
public sealed class FoundEventStore(Database database, FoundNoticeStore notices)
{
    private static readonly TimeSpan Again = TimeSpan.FromMinutes(10), Hour = TimeSpan.FromHours(1), Day = TimeSpan.FromDays(1);

    private sealed record Target
    {
        public long RacketId { get; init; }
        public long ClientId { get; init; }
        public bool IsContactOpen { get; init; }
        public string? Phone { get; init; }
        public string? Mail { get; init; }
    }

    public FoundAnswer Take(FinderPress press) => database.Write(c =>
    {
        if (c.QuerySingleOrDefault<Target>(TargetSql, new { press.Code }) is not { } target || (press.Kind == FoundKind.Shown && !target.IsContactOpen))
            return new FoundAnswer(FoundResult.Closed);
        var contact = press.Kind == FoundKind.Shown ? new FoundContact(target.Phone, target.Mail) : null;
        var isRepeated = IsRepeated(c, press);
        if (!isRepeated && IsTooMany(c, press))
        {
            AuditStore.Note(c, AuditEvent.FindersRefused, "", press.At);
            return new FoundAnswer(FoundResult.TooMany);
        }
        var to = Addressee.Of(c, target.ClientId);
        if (!isRepeated)
        {
            notices.Tell(c, to, target.ClientId, Log(c, press, target), press.Kind != FoundKind.Shown, press.At);
            if (press.Kind == FoundKind.Shown)
                AuditStore.Note(c, AuditEvent.ContactShown, "", press.At);
        }
        return new FoundAnswer(press.Kind == FoundKind.Shown || to.IsReachable ? FoundResult.Done : FoundResult.ByShop, contact);
    });

    private const string TargetSql = $"""
        SELECT r.id AS racket_id, c.id AS client_id, {FoundStore.ContactOpen} AS is_contact_open,
               CASE WHEN {FoundStore.ContactOpen} THEN c.phone END AS phone,
               CASE WHEN {FoundStore.ContactOpen} AND c.found_shows_mail = 1 THEN c.mail END AS mail
        FROM {FoundStore.OpenTag}
        """;

    /// <summary>The same form sent again, or the same button from the same source: counted, logged and mailed once.</summary>
    private static bool IsRepeated(SqliteConnection connection, FinderPress press) => connection.ExecuteScalar<bool>(RepeatedSql, new
    {
        press.Code,
        Kind = press.Kind.ToString(),
        press.FormKey,
        press.Source,
        press.Message,
        Ago = press.At - Again,
        On = press.At + Again,
    });

    private const string RepeatedSql = """
        SELECT EXISTS (SELECT 1 FROM found_event
                       WHERE code = @Code AND kind = @Kind AND at > @Ago AND at < @On
                         AND (form_key = @FormKey OR (source = @Source AND message = @Message)))
        """;

    private static bool IsTooMany(SqliteConnection connection, FinderPress press) =>
        connection.ExecuteScalar<bool>(press.Kind == FoundKind.Shown ? TooManyShownSql : TooManyWordsSql, new
        {
            press.Code,
            press.Source,
            HourAgo = press.At - Hour,
            HourOn = press.At + Hour,
            DayAgo = press.At - Day,
            DayOn = press.At + Day,
        });

    // One source can use at most half of what a tag allows, so it cannot use up what others need. Entries further ahead
    // than the window come from a clock that was wrong, and keep no tag shut.
    private const string TooManyShownSql = """
        SELECT (SELECT COUNT(*) >= 3 OR COUNT(*) FILTER (WHERE source = @Source) >= 1
                FROM found_event WHERE code = @Code AND kind = 'Shown' AND at > @HourAgo AND at < @HourOn)
            OR (SELECT COUNT(*) >= 20 OR COUNT(*) FILTER (WHERE source = @Source) >= 10
                FROM found_event WHERE code = @Code AND kind = 'Shown' AND at > @DayAgo AND at < @DayOn)
            OR (SELECT COUNT(*) >= 5
                FROM found_event WHERE source = @Source AND kind = 'Shown' AND at > @HourAgo AND at < @HourOn)
        """;

    private const string TooManyWordsSql = """
        SELECT (SELECT COUNT(*) >= 10 OR COUNT(*) FILTER (WHERE source = @Source) >= 5
                FROM found_event WHERE code = @Code AND kind <> 'Shown' AND at > @DayAgo AND at < @DayOn)
            OR (SELECT COUNT(*) >= 3
                FROM found_event WHERE source = @Source AND kind <> 'Shown' AND at > @HourAgo AND at < @HourOn)
        """;

    private static long Log(SqliteConnection connection, FinderPress press, Target target) => connection.ExecuteScalar<long>(LogSql, new
    {
        press.Code,
        target.RacketId,
        target.ClientId,
        Kind = press.Kind.ToString(),
        press.At,
        press.Source,
        // A form left open for a long time counts as a new press.
        FormKey = connection.ExecuteScalar<bool>(UsedSql, new { press.FormKey, Kind = press.Kind.ToString() }) ? FormKey.New() : press.FormKey,
        press.Language,
        press.Message,
        press.Contact,
    });

    private const string UsedSql = "SELECT EXISTS (SELECT 1 FROM found_event WHERE form_key = @FormKey AND kind = @Kind)";

    private const string LogSql = """
        INSERT INTO found_event (code, racket_id, client_id, kind, at, source, form_key, language, message, contact)
        VALUES (@Code, @RacketId, @ClientId, @Kind, @At, @Source, @FormKey, @Language, @Message, @Contact)
        RETURNING id
        """;
}
