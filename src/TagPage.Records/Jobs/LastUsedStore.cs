using Dapper;
using TagPage.Core.Strings;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>What the bench entered last: to fill in and to suggest while typing.</summary>
public sealed class LastUsedStore(Database database)
{
    public sealed record Last
    {
        public string StrungBy { get; init; } = "";
        public string Machine { get; init; } = "";
        public long? InstrumentId { get; init; }
    }

    /// <param name="racket">Whose own instrument comes before the one used last.</param>
    public Last LastStrung(long racket) => database.Read(c => c.QuerySingleOrDefault<Last>(LastSql, new { racket })) ?? new Last();

    private const string LastSql = """
        SELECT j.strung_by, j.machine,
               COALESCE((SELECT g.instrument_id FROM reading g JOIN job o ON o.id = g.job_id WHERE o.racket_id = @racket AND g.first = 1 ORDER BY g.id DESC LIMIT 1),
                        (SELECT g.instrument_id FROM reading g WHERE g.first = 1 ORDER BY g.id DESC LIMIT 1)) AS instrument_id
        FROM job j
        WHERE j.id = (SELECT MAX(id) FROM (SELECT id, strung_on FROM job ORDER BY id DESC LIMIT 200) WHERE strung_on IS NOT NULL)
        """;

    public sealed record Suggestions(IReadOnlyList<string> People, IReadOnlyList<string> Machines, IReadOnlyList<string> Places);

    public Suggestions Suggest() => database.Read(c =>
    {
        using var all = c.QueryMultiple(SuggestSql);
        return new Suggestions(all.Read<string>().ToList(), all.Read<string>().ToList(), all.Read<string>().ToList());
    });

    private const string SuggestSql = """
        SELECT DISTINCT strung_by FROM (SELECT strung_by FROM job ORDER BY id DESC LIMIT 500) WHERE strung_by <> '';
        SELECT name FROM machine WHERE is_retired = 0
        UNION SELECT machine FROM (SELECT machine FROM job ORDER BY id DESC LIMIT 500) WHERE machine <> '';
        SELECT DISTINCT received_where FROM (SELECT received_where FROM job ORDER BY id DESC LIMIT 500) WHERE received_where <> '';
        """;

    public sealed record Instrument
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public ReadingScale Scale { get; init; }
    }

    public IReadOnlyList<Instrument> Instruments() => database.Read(c => c.Query<Instrument>(InstrumentsSql).ToList());

    private const string InstrumentsSql = "SELECT id, name, scale FROM instrument ORDER BY name COLLATE NOCASE";
}
