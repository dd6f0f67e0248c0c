using Dapper;
using TagPage.Core.Jobs;
using TagPage.Core.Strings;
using TagPage.Core.Units;
using TagPage.Records.Accounts;
using TagPage.Records.DueDates;
using TagPage.Records.Storage;

namespace TagPage.Records.Rackets;

/// <summary>All that the racket card shows of a racket and its jobs.</summary>
public sealed class CardStore(Database database)
{
    public sealed record Card : ForecastRow
    {
        public int Number { get; init; }
        public string Frame { get; init; } = "";
        public string TapeColour { get; init; } = "";
        public decimal? HeadSize { get; init; }
        public string HeadSizeUnit { get; init; } = "in2";
        public int? PatternCrosses { get; init; }
        public decimal? LengthCm { get; init; }
        public string Grip { get; init; } = "";
        public string OwnDateNote { get; init; } = "";
        public DateOnly? LostSince { get; init; }
        public string LostNote { get; init; } = "";
        public DateOnly? NotBefore { get; init; }
        public DateOnly? ElsewhereOn { get; init; }
        public string Note { get; init; } = "";
        public string PlayerName { get; init; } = "";
        public string PlayerNote { get; init; } = "";
        public string ClientNote { get; init; } = "";
        public bool Junior { get; init; }
        public long ClientId { get; init; }
        public string ClientName { get; init; } = "";
        public bool Reminders { get; init; }
        public bool SpecsOnTag { get; init; }
        public long? CameFromId { get; init; }
        public long? WentToId { get; init; }
        public IReadOnlyList<Job> Jobs { get; init; } = [];
    }

    public sealed record Job
    {
        public long Id { get; init; }
        public long Ticket { get; init; }
        public JobState State { get; init; }
        public DateOnly ReceivedOn { get; init; }
        public DateOnly? StrungOn { get; init; }
        public string StrungBy { get; init; } = "";
        public string MainsName { get; init; } = "";
        public decimal MainsGaugeMm { get; init; }
        public string CrossesName { get; init; } = "";
        public decimal CrossesGaugeMm { get; init; }
        public decimal MainsTension { get; init; }
        public decimal CrossesTension { get; init; }
        public TensionUnit TensionUnit { get; init; }
        public int MainsPreStretch { get; init; }
        public int CrossesPreStretch { get; init; }
        public decimal? Reading { get; init; }
        public string? Instrument { get; init; }
        public ReadingScale? Scale { get; init; }
        public DateOnly? EndedOn { get; init; }
        public BedEnd? EndedHow { get; init; }
        public long? PriceMinor { get; init; }
        public DateOnly? PaidOn { get; init; }
        public string Note { get; init; } = "";

        public Tension Mains => new(MainsTension, TensionUnit);

        public Tension Crosses => new(CrossesTension, TensionUnit);

        public bool IsOpen => State is JobState.Waiting or JobState.OnMachine;

        public bool IsHybrid => MainsName != CrossesName || MainsGaugeMm != CrossesGaugeMm;
    }

    public Card? Get(long id) => database.Read(c =>
        Histories.Into(c, c.QuerySingleOrDefault<Card>(CardSql, new { id })) is { } card
            ? card with { Jobs = c.Query<Job>(JobsSql, new { id }).ToList() }
            : null);

    private const string CardSql = $"""
        SELECT {ForecastRow.Columns}, r.number, r.frame, r.tape_colour, r.head_size, r.head_size_unit, r.pattern_crosses,
               r.length_cm, r.grip, r.own_date_note, r.lost_since, r.lost_note, r.not_before, r.elsewhere_on, r.note, r.specs_on_tag, r.came_from_id,
               (SELECT n.id FROM racket n WHERE n.came_from_id = r.id) AS went_to_id,
               p.name AS player_name, p.note AS player_note, p.junior, c.note AS client_note, c.id AS client_id, c.name AS client_name, c.reminders
        FROM forecast f
        JOIN racket r ON r.id = f.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE f.racket_id = @id
        """;

    /// <summary>SQL: who of the shop pressed that job j is strung, where more than one person signs in.</summary>
    private const string StrungBy = $"""
        (SELECT a.name FROM job_deed d JOIN account a ON a.id = d.made_by
         WHERE d.job_id = j.id AND d.deed = 'Strung' AND {AccountStore.Several} ORDER BY d.id DESC LIMIT 1)
        """;

    private const string JobsSql = $"""
        SELECT j.id, j.ticket, j.state, j.received_on, j.strung_on, COALESCE(NULLIF(j.strung_by, ''), {StrungBy}, '') AS strung_by, m.name AS mains_name,
               m.gauge_mm AS mains_gauge_mm, x.name AS crosses_name, x.gauge_mm AS crosses_gauge_mm,
               j.mains_tension, j.crosses_tension, j.tension_unit, j.mains_pre_stretch, j.crosses_pre_stretch, g.value AS reading,
               i.name AS instrument, i.scale, j.ended_on, j.ended_how, j.price_minor, j.paid_on, j.note
        FROM job j
        JOIN string_kind m ON m.id = j.mains_id
        JOIN string_kind x ON x.id = j.crosses_id
        LEFT JOIN reading g ON g.job_id = j.id AND g.first = 1
        LEFT JOIN instrument i ON i.id = g.instrument_id
        WHERE j.racket_id = @id
        ORDER BY j.strung_on IS NULL DESC, j.strung_on DESC, j.id DESC
        """;
}
