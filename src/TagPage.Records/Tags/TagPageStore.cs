using Dapper;
using TagPage.Core.Tags;
using TagPage.Records.DueDates;
using TagPage.Records.Storage;

namespace TagPage.Records.Tags;

/// <summary>What a tag's code opens to everybody.</summary>
public sealed class TagPageStore(Database database)
{
    /// <summary>Null for a code that no tag has.</summary>
    public TagState? StateOf(TagCode code) =>
        database.Read(c => c.QuerySingleOrDefault<string>(StateSql, new { code = code.ToString() })) is { } state ? Enum.Parse<TagState>(state) : null;

    private const string StateSql = "SELECT state FROM tag WHERE code = @code";

    /// <summary>Null unless the tag is live.</summary>
    public TagRow? Racket(TagCode code) => database.Read(c => Histories.Into(c, c.QuerySingleOrDefault<TagRow>(RacketSql, new { code = code.ToString() })));

    private const string RacketSql = $"""
        SELECT r.number, r.tape_colour, r.lost_since IS NOT NULL AS is_lost, r.lost_note, {ForecastRow.Columns}
        FROM tag t
        JOIN racket r ON r.id = t.racket_id
        JOIN forecast f ON f.racket_id = t.racket_id
        WHERE t.code = @code AND t.state = 'Live'
        """;

    /// <summary>The newest <paramref name="most"/> stringings behind a live tag, newest first.</summary>
    public IReadOnlyList<StringingRow> Stringings(TagCode code, int most) =>
        database.Read(c => c.Query<StringingRow>(StringingsSql, new { code = code.ToString(), most }).ToList());

    private const string StringingsSql = $"""
        SELECT {StringingRow.Columns}
        FROM tag t
        JOIN job j ON j.racket_id = t.racket_id
        {StringingRow.Joins}
        WHERE t.code = @code AND t.state = 'Live' AND j.strung_on IS NOT NULL
        ORDER BY j.strung_on DESC, j.id DESC
        LIMIT @most
        """;

    /// <summary>The newest <paramref name="most"/> visits behind a live tag, newest first.</summary>
    public IReadOnlyList<VisitOfTag> Visits(TagCode code, int most) => database.Read(c => c.Query<VisitOfTag>(VisitsSql, new { code = code.ToString(), most }).AsList());

    private const string VisitsSql = $"""
        SELECT {VisitOfTag.Columns}
        FROM tag t
        JOIN job j ON j.racket_id = t.racket_id
        WHERE t.code = @code AND t.state = 'Live' AND j.done_on IS NOT NULL
        ORDER BY j.done_on DESC, j.id DESC
        LIMIT @most
        """;

    /// <summary>The newest spec behind a live tag; null unless it is switched on for the racket.</summary>
    public TagSpecRow? Spec(TagCode code) => database.Read(c => c.QuerySingleOrDefault<TagSpecRow>(SpecSql, new { code = code.ToString() }));

    private const string SpecSql = """
        SELECT s.weight_g, s.balance_mm, s.length_mm, s.swing_weight
        FROM tag t
        JOIN racket r ON r.id = t.racket_id AND r.specs_on_tag = 1
        JOIN spec s ON s.racket_id = r.id AND COALESCE(s.weight_g, s.balance_mm, s.swing_weight) IS NOT NULL
        WHERE t.code = @code AND t.state = 'Live'
        ORDER BY s.measured_on DESC, s.id DESC
        LIMIT 1
        """;
}
