using Dapper;
using TagPage.Core.Tags;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>What a tag's found page offers, as the client chose. Nothing here says who that is.</summary>
public sealed class FoundStore(Database database)
{
    public sealed record Row
    {
        /// <summary>The public note of a racket that is marked lost.</summary>
        public string Note { get; init; } = "";

        public bool IsContactOpen { get; init; }
    }

    /// <summary>A live tag that the owner did not block, of a client who agreed to more than the shop's contact.</summary>
    internal const string OpenTag = """
        tag t
        JOIN racket r ON r.id = t.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE t.code = @Code AND t.state = 'Live' AND t.found_blocked_at IS NULL AND c.found_choice IN ('Message', 'Contact')
        """;

    /// <summary>The contact may be shown: agreed to, for now or for always, and there is one.</summary>
    internal const string ContactOpen = """
        (c.found_choice = 'Contact' AND (c.found_always = 1 OR r.lost_since IS NOT NULL)
         AND (c.phone IS NOT NULL OR (c.found_shows_mail = 1 AND c.mail IS NOT NULL)))
        """;

    /// <summary>Null where a finder gets the shop's contact and nothing else.</summary>
    public Row? Open(TagCode code) => database.Read(c => c.QuerySingleOrDefault<Row>(OpenSql, new { Code = code }));

    private const string OpenSql = $"""
        SELECT CASE WHEN r.lost_since IS NOT NULL THEN r.lost_note ELSE '' END AS note, {ContactOpen} AS is_contact_open
        FROM {OpenTag}
        """;

    /// <summary>True for a code that stands on no tag, or on a blank one: guessed, most likely.</summary>
    public bool IsWrong(TagCode code) => !database.Read(c => c.ExecuteScalar<bool>(KnownSql, new { Code = code }));

    private const string KnownSql = "SELECT EXISTS (SELECT 1 FROM tag WHERE code = @Code AND state <> 'Unassigned')";
}
