using Dapper;
using TagPage.Records.Specs;
using TagPage.Records.Storage;

namespace TagPage.Records.Labels;

/// <summary>What labels are made of, and what a label leaves behind at its racket.</summary>
public sealed class LabelStore(Database database)
{
    /// <summary>A racket with one of its jobs; the newest strung one where none is named. Null where either is not there.</summary>
    public LabelRow? Get(long racket, long? job = null) => database.Read(c =>
    {
        if (c.QuerySingleOrDefault<LabelRow>(RacketSql, new { racket }) is not { } row)
            return null;
        var part = c.QueryFirstOrDefault<LabelRow.JobPart>(JobSql, new { racket, job });
        var waiting = c.QueryFirstOrDefault<LabelRow.WaitingPart>(WaitingSql, new { racket, job });
        return job is not null && part is null && waiting is null
            ? null
            : row with { Job = part, Waiting = waiting, Spec = SpecStore.Of(c, racket) is [var newest, ..] ? newest : null };
    });

    private const string RacketSql = """
        SELECT r.id AS racket_id, r.number, r.sport, r.frame, r.tape_colour, r.label_tape, r.label_ink, r.label_line,
               p.id AS player_id, p.name AS player_name, p.junior, p.label_name, t.code
        FROM racket r
        JOIN player p ON p.id = r.player_id
        LEFT JOIN tag t ON t.racket_id = r.id AND t.state = 'Live'
        WHERE r.id = @racket
        """;

    private const string JobSql = """
        SELECT j.id, j.ticket, j.strung_on,
               COALESCE(j.label_date, CASE WHEN f.bed_id = j.id THEN r.due_on END) AS label_date, m.name AS mains_name, m.gauge_mm AS mains_gauge_mm, x.name AS crosses_name,
               x.gauge_mm AS crosses_gauge_mm, j.mains_tension, j.crosses_tension, j.tension_unit,
               g.value AS reading, i.name AS instrument
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN forecast f ON f.racket_id = r.id
        JOIN string_kind m ON m.id = j.mains_id
        JOIN string_kind x ON x.id = j.crosses_id
        LEFT JOIN reading g ON g.job_id = j.id AND g.first = 1
        LEFT JOIN instrument i ON i.id = g.instrument_id
        WHERE j.racket_id = @racket AND j.strung_on IS NOT NULL AND (@job IS NULL OR j.id = @job)
        ORDER BY j.strung_on DESC, j.id DESC
        LIMIT 1
        """;

    private const string WaitingSql = """
        SELECT j.id, j.ticket, j.promised_for, m.name AS mains_name, m.gauge_mm AS mains_gauge_mm, x.name AS crosses_name, x.gauge_mm AS crosses_gauge_mm,
               j.mains_tension, j.crosses_tension, j.tension_unit, COALESCE(q.asked_words, '') AS wish, (SELECT group_concat(w.work, ' ') FROM visit_work w WHERE w.job_id = j.id) AS work
        FROM job j
        LEFT JOIN string_kind m ON m.id = j.mains_id
        LEFT JOIN string_kind x ON x.id = j.crosses_id
        LEFT JOIN job_request q ON q.job_id = j.id
        WHERE j.racket_id = @racket AND j.state IN ('Waiting', 'OnMachine') AND (@job IS NULL OR j.id = @job)
        ORDER BY j.id DESC
        LIMIT 1
        """;

    /// <summary>A job with its racket; null where it is not there, or neither waits nor is strung.</summary>
    public LabelRow? OfJob(long job) => database.Read(c => c.ExecuteScalar<long?>("SELECT racket_id FROM job WHERE id = @job", new { job })) is { } racket ? Get(racket, job) : null;

    /// <summary>Jobs strung on a day, in the order of their tickets.</summary>
    public IReadOnlyList<LabelRow> StrungOn(DateOnly day) =>
        [.. database.Read(c => c.Query<(long Job, long Racket)>(StrungOnSql, new { day }).ToList()).Select(pair => Get(pair.Racket, pair.Job)!)];

    private const string StrungOnSql = "SELECT id, racket_id FROM job WHERE strung_on = @day ORDER BY ticket";

    /// <summary>Keeps with the racket what its next label starts from, and with the player what the guardian agreed to.</summary>
    public Outcome Remember(Who who, long racket, LabelEntry input, DateOnly today) => database.Write<Outcome>(c =>
    {
        if (c.Execute(RememberSql, new { who.IsShop, racket, Tape = input.TapeColour ?? "", input.RacketColour, Ink = input.InkColour ?? "", Line = input.OwnLine ?? "" }) == 0)
            return new Outcome.Absent();
        c.Execute(AgreedSql, new { racket, Name = input.AgreedName ?? "", today });
        return new Outcome.Done(racket);
    });

    private const string RememberSql = """
        UPDATE racket
        SET label_tape = @Tape, label_ink = @Ink, label_line = @Line, tape_colour = COALESCE(@RacketColour, tape_colour),
            version = version + (tape_colour <> COALESCE(@RacketColour, tape_colour))
        WHERE id = @racket AND @IsShop
        """;

    private const string AgreedSql = """
        UPDATE player
        SET label_name = @Name, label_name_on = CASE WHEN @Name = '' THEN NULL ELSE @today END
        WHERE id = (SELECT player_id FROM racket WHERE id = @racket) AND junior = 1 AND label_name <> @Name
        """;
}
