using Dapper;
using TagPage.Records.Audit;
using TagPage.Records.Storage;

namespace TagPage.Records.Privacy;

/// <summary>What the shop’s record of processing tells of whom is on file and of what they asked for.</summary>
public sealed class PrivacyStore(Database database)
{
    public sealed record People
    {
        public int Clients { get; init; }
        public int Players { get; init; }
        public int Juniors { get; init; }

        /// <summary>Clients who let a finder write to them, and those who let one see how to reach them.</summary>
        public int LetFindersWrite { get; init; }
        public int LetFindersCall { get; init; }
        public int Reminded { get; init; }

        /// <summary>Juniors whose guardian agreed to a name on labels.</summary>
        public int NamedOnLabels { get; init; }
        public int Payers { get; init; }
        public bool AllSignInWithCodes { get; init; }
    }

    /// <summary>A client whose data is going to be deleted.</summary>
    public sealed record Leaving
    {
        public long Id { get; init; }
        public DateTimeOffset ForgetAt { get; init; }
        public DateTimeOffset AskedAt => ForgetAt - ForgetStore.Grace;
    }

    /// <summary>A download or a deletion that is done.</summary>
    public sealed record Done
    {
        public AuditEvent Event { get; init; }
        public string Detail { get; init; } = "";
        public DateTimeOffset At { get; init; }
    }

    /// <summary>Null for anybody but the shop.</summary>
    public People? Get(Who who) => database.Read(c => c.QuerySingleOrDefault<People>(PeopleSql, new { who.IsOwner }));

    private const string PeopleSql = """
        SELECT (SELECT COUNT(*) FROM client) AS clients,
               (SELECT COUNT(*) FROM client WHERE found_choice = 'Message') AS let_finders_write,
               (SELECT COUNT(*) FROM client WHERE found_choice = 'Contact') AS let_finders_call,
               (SELECT COUNT(*) FROM client WHERE reminders = 1) AS reminded,
               (SELECT COUNT(*) FROM player) AS players,
               (SELECT COUNT(*) FROM player WHERE junior = 1) AS juniors,
               (SELECT COUNT(*) FROM player WHERE junior = 1 AND label_name <> '') AS named_on_labels,
               (SELECT COUNT(*) FROM payer) AS payers,
               NOT EXISTS (SELECT 1 FROM account WHERE two_factor = 0) AS all_sign_in_with_codes
        WHERE @IsOwner
        """;

    /// <summary>The next one first.</summary>
    public IReadOnlyList<Leaving> AllLeaving(Who who) => database.Read(c => c.Query<Leaving>(LeavingSql, new { who.IsOwner }).AsList());

    private const string LeavingSql = "SELECT id, forget_at FROM client WHERE @IsOwner AND forget_at IS NOT NULL ORDER BY forget_at, id";

    /// <summary>Of the last year, the newest first.</summary>
    public IReadOnlyList<Done> AllDone(Who who) => database.Read(c =>
        c.Query<Done>(DoneSql, new { who.IsOwner, Wanted = new[] { (int)AuditEvent.ClientDownloaded, (int)AuditEvent.ClientErased } }).AsList());

    private const string DoneSql = """
        SELECT event, detail, last_at AS at
        FROM audit
        WHERE @IsOwner AND event IN @Wanted
        ORDER BY id DESC
        LIMIT 200
        """;
}
