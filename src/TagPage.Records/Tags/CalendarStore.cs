using Dapper;
using TagPage.Core.Tags;
using TagPage.Records.Storage;

namespace TagPage.Records.Tags;

/// <summary>What identifies a racket's entry in calendars. Nothing else of the racket can be told from it.</summary>
public sealed class CalendarStore(Database database)
{
    public sealed record Entry
    {
        /// <summary>32 random hexadecimal digits, the same for ever.</summary>
        public string Uid { get; init; } = "";

        /// <summary>Grows whenever the entry's day or title changes.</summary>
        public int Number { get; init; }
    }

    /// <summary>Null unless the tag is live.</summary>
    public Entry? Of(TagCode code) => database.Read(c => c.QuerySingleOrDefault<Entry>(OfSql, new { code }));

    private const string OfSql = """
        SELECT r.calendar_uid AS uid, r.calendar_number AS number
        FROM tag t
        JOIN racket r ON r.id = t.racket_id
        WHERE t.code = @code AND t.state = 'Live'
        """;
}
