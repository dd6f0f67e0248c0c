using System.Security.Cryptography;
using Dapper;
using TagPage.Core.Tags;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Cast;

/// <summary>Puts the cast's records on file, straight into the tables: tests of a page should not hang on the forms of others.</summary>
public sealed class OnFile(Database database)
{
    public const string CanaryPhone = "+442079460958";
    public const string CanaryMail = "odalys@canary.example";
    public const string CanaryNote = "canary: ring the side door";

    /// <summary>Odalys, guardian of Pim, a junior with racket 1; tagged, strung on 1 November 2026.</summary>
    public (long Client, long Player, long Racket, TagCode Tag, long Job) Family()
    {
        var client = Client("Odalys Ferran", CanaryPhone, CanaryMail);
        var player = Player(client, "Pim Ferran", junior: true);
        var racket = Racket(player);
        return (client, player, racket, LiveTag(racket), Job(racket, strungOn: new(2026, 11, 1)));
    }

    /// <summary>The shop itself, open to be called. Say only what matters to the test.</summary>
    public void Shop(string? accent = null, string homeMarkdown = "", string timeZone = "Etc/UTC") => Change("""
        INSERT INTO shop (id, name, phone, mail, street, town, country, opening_hours, home_markdown, accent, time_zone, currency, tension_unit)
        VALUES (1, 'Ferrygate Racket Bench', '+442079460182', 'bench@ferrygate.example', '3 Chandler’s Steps', 'Eastmere', 'GB',
                'Saturday 9:00–13:00', @homeMarkdown, @accent, @timeZone, 'GBP', 'Lb')
        """, new { accent, homeMarkdown, timeZone });

    /// <summary>The owner's own words of a message, in the table's name for what it is for.</summary>
    public void OwnWords(string purpose, string words, string subject = "") =>
        Change("INSERT OR REPLACE INTO message (purpose, subject, words) VALUES (@purpose, @subject, @words)", new { purpose, subject, words });

    public long Client(string name, string? phone = null, string? mail = null) =>
        Insert("INSERT INTO client (name, phone, mail, note) VALUES (@name, @phone, @mail, @note)", new { name, phone, mail, note = CanaryNote });

    public long Player(long client, string name, bool junior = false, decimal timesAWeek = 2, decimal hoursATime = 1.5m) =>
        Insert("""
            INSERT INTO player (client_id, name, junior, times_a_week, hours_a_time, note)
            VALUES (@client, @name, @junior, @timesAWeek, @hoursATime, @note)
            """, new { client, name, junior, timesAWeek, hoursATime, note = CanaryNote });

    public long Racket(long player, int number = 1, string state = "InTurn", string frame = "Pellmore Meadow 98", string tapeColour = "red") =>
        Insert("""
            INSERT INTO racket (player_id, number, state, sport, frame, tape_colour, pattern_mains, pattern_crosses, note)
            VALUES (@player, @number, @state, 'Tennis', @frame, @tapeColour, 16, 19, @note)
            """, new { player, number, state, frame, tapeColour, note = CanaryNote });

    public long Kind(string name = "Heron Spin", string material = "Polyester", decimal gaugeMm = 1.25m) =>
        database.Read(c => c.ExecuteScalar<long?>("SELECT id FROM string_kind WHERE name = @name AND gauge_mm = @gaugeMm", new { name, gaugeMm }))
        ?? Insert("INSERT INTO string_kind (name, material, gauge_mm) VALUES (@name, @material, @gaugeMm)", new { name, material, gaugeMm });

    /// <summary>A job that is waiting, or strung and collected on the day given.</summary>
    public long Job(long racket, DateOnly? strungOn = null, DateOnly? paidOn = null, string note = CanaryNote)
    {
        var kind = Kind();
        var job = Insert("""
            INSERT INTO job (ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension,
                             tension_unit, received_on, strung_on, strung_by, collected_on, price_minor, paid_on, note)
            SELECT COALESCE(MAX(ticket), 1000) + 1, @racket, CASE WHEN @strungOn IS NULL THEN 'Waiting' ELSE 'Collected' END, @kind, @kind, 'Shop', 'Shop', 52, 50,
                   'Lb', COALESCE(@strungOn, '2026-11-24'), @strungOn, CASE WHEN @strungOn IS NULL THEN '' ELSE 'Runa' END, @strungOn, 2450, @paidOn, @note
            FROM job
            """, new { racket, kind, strungOn, paidOn, note });
        Change("INSERT INTO charge (job_id, kind, amount_minor) SELECT id, 'Whole', price_minor FROM job WHERE id = @job", new { job });
        return job;
    }

    /// <summary>What was measured right after stringing.</summary>
    public long Reading(long job, decimal value, string scale = "Stiffness")
    {
        Change("INSERT OR IGNORE INTO instrument (name, scale) VALUES (@scale || ' gauge', @scale)", new { scale });
        return Insert("""
            INSERT INTO reading (job_id, first, taken_on, instrument_id, value, note)
            SELECT j.id, 1, j.strung_on, i.id, @value, @note FROM job j, instrument i WHERE j.id = @job AND i.scale = @scale
            """, new { job, value, scale, note = CanaryNote });
    }

    /// <summary>A spec of a frame of 685 mm with its grip, measured on 20 November 2026.</summary>
    public void Measured(long racket, decimal grams, decimal mm, decimal swing, bool strung = true) => Change("""
        INSERT INTO spec (racket_id, measured_on, weight, balance, swing_weight, length, strung, grip_on, dampener_on)
        VALUES (@racket, '2026-11-20', @grams, @mm, @swing, 685, @strung, 1, 0)
        """, new { racket, grams, mm, swing, strung });

    /// <summary>A reminder to a client about a racket.</summary>
    public long Reminder(long client, long racket, string madeAt = "2026-11-25T09:00:00.000Z") => database.Write(c =>
    {
        var id = c.ExecuteScalar<long>("INSERT INTO reminder (client_id, made_at, expires_at) VALUES (@client, @madeAt, '2027-01-24T09:00:00.000Z') RETURNING id", new { client, madeAt });
        c.Execute("INSERT INTO reminder_racket (reminder_id, racket_id, due) VALUES (@id, @racket, '2026-11-20')", new { id, racket });
        return id;
    });

    public TagCode LiveTag(long racket) => Tag("Live", racket);

    public TagCode BlankTag() => Tag("Unassigned", null);

    public TagCode RetiredTag(long? racket = null) => Tag("Retired", racket);

    private TagCode Tag(string state, long? racket)
    {
        var code = TagCode.Draw(RandomNumberGenerator.Fill);
        Insert("""
            INSERT INTO tag (code, state, racket_id, made_at, linked_at, retired_at)
            VALUES (@code, @state, @racket, @at, CASE WHEN @racket IS NOT NULL THEN @at END, CASE WHEN @state = 'Retired' THEN @at END)
            """, new { code, state, racket, at = "2026-10-01T09:00:00.000Z" });
        return code;
    }

    public long Count(string table, string where = "1 = 1") => database.Read(c => c.ExecuteScalar<long>($"SELECT COUNT(*) FROM {table} WHERE {where}"));

    public string Text(string sql) => database.Read(c => c.ExecuteScalar<string>(sql)) ?? "";

    /// <summary>For what only one test needs.</summary>
    public void Change(string sql, object? values = null) => database.Write(c => c.Execute(sql, values));

    private long Insert(string sql, object values) => database.Write(c =>
    {
        c.Execute(sql, values);
        return c.ExecuteScalar<long>("SELECT last_insert_rowid()");
    });
}
