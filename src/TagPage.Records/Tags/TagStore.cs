using System.Security.Cryptography;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Rackets;
using TagPage.Core.Tags;
using TagPage.Records.Storage;

namespace TagPage.Records.Tags;

/// <summary>The codes by which the world knows the rackets. A racket has at most one that is live; a retired one is never used again.</summary>
public sealed class TagStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public TagCode Code { get; init; }
        public TagState State { get; init; }
        public long? RacketId { get; init; }
        public int Number { get; init; }
        public string PlayerName { get; init; } = "";
        public DateTimeOffset MadeAt { get; init; }
        public DateTimeOffset? LinkedAt { get; init; }
        public DateTimeOffset? RetiredAt { get; init; }
        public DateTimeOffset? FoundBlockedAt { get; init; }
    }

    public Row? Get(TagCode code) => database.Read(c => Get(c, code));

    private static Row? Get(SqliteConnection connection, TagCode code) => connection.QuerySingleOrDefault<Row>(GetSql, new { code });

    private const string GetSql = """
        SELECT t.code, t.state, t.racket_id, r.number, p.name AS player_name, t.made_at, t.linked_at, t.retired_at, t.found_blocked_at
        FROM tag t
        LEFT JOIN racket r ON r.id = t.racket_id
        LEFT JOIN player p ON p.id = r.player_id
        WHERE t.code = @code
        """;

    /// <summary>All tags a racket ever had, the live one first.</summary>
    public IReadOnlyList<Row> Of(long racket) => database.Read(c => c.Query<Row>(OfSql, new { racket }).ToList());

    private const string OfSql = """
        SELECT t.code, t.state, t.racket_id, r.number, p.name AS player_name, t.made_at, t.linked_at, t.retired_at, t.found_blocked_at
        FROM tag t
        JOIN racket r ON r.id = t.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE t.racket_id = @racket
        ORDER BY t.state = 'Live' DESC, t.retired_at DESC
        """;

    /// <summary>A new tag for a racket without one. The result's id is the racket's.</summary>
    public Outcome Make(Who who, long racket, string formKey) => database.WriteOnceAsShop(who, formKey, clock.GetUtcNow(), c =>
        Untaggable(c, racket)
        ?? (LiveOf(c, racket) is null
            ? Insert(c, racket, clock.GetUtcNow())
            : new Outcome.Refused(new TaggedAlready())));

    /// <summary>New tags for those of the rackets that have none and may have one. Idempotent. Done carries how many were made.</summary>
    public Outcome MakeMissing(Who who, IReadOnlyList<long> rackets) => database.WriteAsShop(who, c =>
        new Outcome.Done(rackets.Distinct().Count(racket => Untaggable(c, racket) is null && LiveOf(c, racket) is null && Insert(c, racket, clock.GetUtcNow()) is Outcome.Done)));

    /// <summary>Retires a live tag and makes the next one for the same racket. The result's id is the racket's.</summary>
    public Outcome Replace(Who who, TagCode code, string formKey) => database.WriteOnceAsShop(who, formKey, clock.GetUtcNow(), c =>
    {
        if (Get(c, code) is not { State: TagState.Live, RacketId: { } racket })
            return new Outcome.Refused(new TagNotInUse());
        RetireOf(c, racket, clock.GetUtcNow());
        return Insert(c, racket, clock.GetUtcNow());
    });

    /// <summary>Retires a live tag. Idempotent.</summary>
    public Outcome Retire(Who who, TagCode code) => database.WriteAsShop(who, c =>
    {
        if (Get(c, code) is not { RacketId: { } racket } row)
            return new Outcome.Absent();
        if (row.State == TagState.Live)
            RetireOf(c, racket, clock.GetUtcNow());
        return new Outcome.Done(racket);
    });

    /// <summary>Closes a live tag's found page, or opens it. The result's id is the racket's.</summary>
    public Outcome BlockFinders(Who who, TagCode code, bool block) => database.WriteAsOwner(who, c =>
        c.QuerySingleOrDefault<long?>(BlockSql, new { code, At = block ? clock.GetUtcNow() : (DateTimeOffset?)null }) is { } racket
            ? new Outcome.Done(racket)
            : new Outcome.Absent());

    private const string BlockSql = "UPDATE tag SET found_blocked_at = @At WHERE code = @code AND state = 'Live' RETURNING racket_id";

    /// <summary>Links a blank tag and retires the racket's live one. Idempotent.</summary>
    public Outcome Link(Who who, TagCode code, long racket) => database.WriteAsShop(who, c =>
    {
        if (Untaggable(c, racket) is { } untaggable)
            return untaggable;
        if (Get(c, code) is { State: TagState.Live } row && row.RacketId == racket)
            return new Outcome.Done(racket);
        if (WhyNotBlank(c, code) is { } why)
            return new Outcome.Refused(why);
        RetireOf(c, racket, clock.GetUtcNow());
        c.Execute(LinkSql, new { code, racket, Now = clock.GetUtcNow() });
        return new Outcome.Done(racket);
    });

    /// <summary>Gives a blank tag to a racket that has none; within the caller's transaction.</summary>
    internal static void LinkNew(SqliteConnection connection, TagCode code, long racket, DateTimeOffset now) =>
        connection.Execute(LinkSql, new { code, racket, Now = now });

    private const string LinkSql = """
        UPDATE tag SET state = 'Live', racket_id = @racket, linked_at = @Now
        WHERE code = @code AND state = 'Unassigned'
        """;

    /// <summary>Why a code cannot be linked, or null when it can.</summary>
    internal static NotBlank? WhyNotBlank(SqliteConnection connection, TagCode code, string place = "") => Get(connection, code) switch
    {
        null => new NoSuchTag(place),
        { State: TagState.Live } row => new TagOnRacket(row.Number, row.PlayerName, place),
        { State: TagState.Retired } => new TagRetired(place),
        _ => null,
    };

    internal static Outcome Insert(SqliteConnection connection, long racket, DateTimeOffset now)
    {
        connection.Execute(InsertSql, new { Code = TagCode.Draw(RandomNumberGenerator.Fill), racket, Now = now });
        return new Outcome.Done(racket);
    }

    private const string InsertSql = """
        INSERT INTO tag (code, state, racket_id, made_at, linked_at)
        VALUES (@Code, 'Live', @racket, @Now, @Now)
        """;

    /// <summary>Retires the tag a racket has; within the caller's transaction.</summary>
    internal static void RetireOf(SqliteConnection connection, long racket, DateTimeOffset now) =>
        connection.Execute(RetireSql, new { racket, Now = now });

    private const string RetireSql = "UPDATE tag SET state = 'Retired', retired_at = @Now WHERE racket_id = @racket AND state = 'Live'";

    private static TagCode? LiveOf(SqliteConnection connection, long racket) =>
        connection.QuerySingleOrDefault<TagCode?>(LiveSql, new { racket });

    private const string LiveSql = "SELECT code FROM tag WHERE racket_id = @racket AND state = 'Live'";

    private static Outcome? Untaggable(SqliteConnection connection, long racket) =>
        connection.QuerySingleOrDefault<string?>(RacketStateSql, new { racket }) switch
        {
            null => new Outcome.Absent(),
            nameof(RacketState.Sold) => new Outcome.Refused(new RacketSold()),
            _ => null,
        };

    private const string RacketStateSql = "SELECT state FROM racket WHERE id = @racket";
}
