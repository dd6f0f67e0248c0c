using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Strings;
using TagPage.Records.Money;

namespace TagPage.Records.Import;

/// <summary>Writes a batch's rows, in the caller's transaction, so that each row comes after those it refers to.</summary>
internal static class ImportRowStore
{
    public static void Add(SqliteConnection connection, ImportBatch batch, DateTimeOffset now)
    {
        AddClients(connection, batch);
        Insert(connection, "player", PlayerSql, batch.Players.Rows);
        Insert(connection, "string_kind", StringSql, batch.Strings.Rows);
        Insert(connection, "frame", FrameSql, batch.Frames);
        AddRackets(connection, batch.Rackets.Rows, now);
        MeasuredRowStore.Add(connection, batch);
        AddJobs(connection, [.. batch.Jobs.Where(j => !j.IsThere)], now);
    }

    /// <summary>Those that are not there yet.</summary>
    private static void Insert<T>(SqliteConnection connection, string table, string sql, List<T> rows) where T : ImportRow
    {
        List<T> fresh = [.. rows.Where(r => !r.IsThere)];
        Number(connection, table, fresh);
        connection.Execute(sql, fresh);
    }

    private const string PlayerSql = """
        INSERT INTO player (id, client_id, name, junior, times_a_week, hours_a_time, hitting, rule, every_weeks, note)
        VALUES (@Id, @ClientId, @Name, @Junior, @TimesAWeek, @HoursATime, @HittingName, @RuleName, @EveryWeeks, @Note)
        """;

    private const string FrameSql = """
        INSERT INTO frame (id, sport, name, name_key, pattern_mains, pattern_crosses, skipped_holes, tie_offs, least_tension, most_tension, tension_unit, note)
        VALUES (@Id, @SportName, @Name, @Key, @Mains, @Crosses, @SkippedHoles, @TieOffs, @Least, @Most, @TensionUnitName, @Note)
        """;

    private static void AddClients(SqliteConnection connection, ImportBatch batch)
    {
        List<ClientRow> fresh = [.. batch.Clients.Rows.Where(c => !c.IsThere)];
        var payers = PayerIds(connection, fresh.Select(c => c.Payer).OfType<PayerRow>());
        foreach (var client in fresh.Where(c => c.Payer is not null))
            client.PayerId = payers[client.Payer!];
        Insert(connection, "client", ClientSql, fresh);
        connection.Execute(FillSql, batch.Clients.Rows.Where(c => c.IsThere));
    }

    // What is on file stays; a way to reach somebody that was missing is filled in.
    private const string FillSql = """
        UPDATE client SET phone = COALESCE(phone, @Phone), mail = COALESCE(mail, @Mail), version = version + 1
        WHERE id = @Id AND ((phone IS NULL AND @Phone IS NOT NULL) OR (mail IS NULL AND @Mail IS NOT NULL))
        """;

    private const string ClientSql = """
        INSERT INTO client (id, name, phone, mail, language, payer_id, reminders, note)
        VALUES (@Id, @Name, @Phone, @Mail, @Language, @PayerId, @Reminders, @Note)
        """;

    private sealed record Payer
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
    }

    /// <summary>Payers the shop already has, by name, phone and email, are reused.</summary>
    private static Dictionary<PayerRow, long> PayerIds(SqliteConnection connection, IEnumerable<PayerRow> payers)
    {
        var ids = connection.Query<Payer>(PayersSql).GroupBy(p => new PayerRow(p.Name, p.Phone, p.Mail)).ToDictionary(g => g.Key, g => g.First().Id);
        foreach (var payer in payers.Where(p => !ids.ContainsKey(p)).Distinct().ToList())
            ids[payer] = connection.ExecuteScalar<long>(PayerSql, payer);
        return ids;
    }

    private const string PayersSql = "SELECT id, name, phone, mail FROM payer ORDER BY id";

    private const string PayerSql = "INSERT INTO payer (name, phone, mail) VALUES (@Name, @Phone, @Mail) RETURNING id";

    public sealed record KnownString
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public decimal GaugeMm { get; init; }
        public Material Material { get; init; }
    }

    /// <summary>The shop's strings by <see cref="StringKey"/>.</summary>
    public static Dictionary<string, KnownString> Catalogue(SqliteConnection connection) =>
        connection.Query<KnownString>(CatalogueSql).GroupBy(s => StringKey(s.Name, s.GaugeMm)).ToDictionary(g => g.Key, g => g.First());

    private const string CatalogueSql = "SELECT id, name, gauge_mm, material FROM string_kind ORDER BY id";

    public static string StringKey(string name, decimal gaugeMm) =>
        string.Create(CultureInfo.InvariantCulture, $"{name.ToUpperInvariant()} {gaugeMm:0.###}");

    private const string StringSql = """
        INSERT INTO string_kind (id, name, material, gauge_mm, note)
        VALUES (@Id, @Name, @MaterialName, @GaugeMm, @Note)
        """;

    private static void AddRackets(SqliteConnection connection, List<RacketRow> rows, DateTimeOffset now)
    {
        Insert(connection, "racket", RacketSql, rows);
        foreach (var racket in rows)
            foreach (var tag in racket.Tags)
                (tag.RacketId, tag.MadeAt) = (racket.Id, now);
        connection.Execute(TagSql, rows.SelectMany(r => r.Tags).Where(t => !t.IsOnFile));
    }

    private const string RacketSql = """
        INSERT INTO racket (id, player_id, number, state, sport, frame, tape_colour, head_size, head_size_unit, pattern_mains,
                            pattern_crosses, length_cm, grip, own_date, own_date_note, lost_since)
        VALUES (@Id, @PlayerId, @Number, @StateName, @SportName, @Frame, @TapeColour, @HeadSize, @HeadSizeUnit, @Mains,
                @Crosses, @LengthCm, @Grip, @OwnDate, @OwnDateNote, @LostSince)
        """;

    private const string TagSql = """
        INSERT INTO tag (code, state, racket_id, made_at, linked_at, retired_at)
        VALUES (@Code, @State, @RacketId, @MadeAt, @MadeAt, @RetiredAt)
        """;

    private static void AddJobs(SqliteConnection connection, List<JobRow> rows, DateTimeOffset now)
    {
        Insert(connection, "job", JobSql, rows);
        BroughtMoneyStore.Add(connection, rows.Select(j => (j.Id, j.PaidHow)), now);
        var instruments = InstrumentIds(connection, rows);
        foreach (var job in rows.Where(j => j.Reading is not null))
            job.InstrumentId = instruments[job.Instrument];
        connection.Execute(ReadingSql, rows.Where(j => j.Reading is not null));
    }

    private const string JobSql = """
        INSERT INTO job (id, ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension,
                         crosses_tension, tension_unit, mains_pre_stretch, crosses_pre_stretch, pieces, received_on, received_where, promised_for,
                         strung_on, strung_by, machine, collected_on, price_minor, paid_on, note, ended_on, ended_how)
        VALUES (@Id, @Ticket, @RacketId, @StateName, @MainsId, @CrossesId, @MainsSupplier, @CrossesSupplier, @MainsTension,
                @CrossesTension, @TensionUnitName, @MainsPreStretch, @CrossesPreStretch, @Pieces, @ReceivedOn, @ReceivedWhere, @PromisedFor,
                @StrungOn, @StrungBy, @Machine, @CollectedOn, @PriceMinor, @PaidOn, @Note, @EndedOn, @EndedHowName)
        """;

    private const string ReadingSql = """
        INSERT INTO reading (job_id, first, taken_on, instrument_id, value)
        VALUES (@Id, 1, @StrungOn, @InstrumentId, @Reading)
        """;

    private static Dictionary<string, long> InstrumentIds(SqliteConnection connection, List<JobRow> jobs)
    {
        var ids = connection.Query<(string Name, long Id)>(InstrumentsSql).ToDictionary(i => i.Name, i => i.Id, StringComparer.OrdinalIgnoreCase);
        foreach (var name in jobs.Select(j => j.Instrument).Where(n => n.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase).ToList())
        {
            var scale = name.EndsWith("Hz", StringComparison.OrdinalIgnoreCase) ? ReadingScale.Hertz : ReadingScale.Stiffness;
            if (!ids.ContainsKey(name))
                ids[name] = connection.ExecuteScalar<long>(InstrumentSql, new { name, scale = scale.ToString() });
        }
        return ids;
    }

    private const string InstrumentsSql = "SELECT name, id FROM instrument";

    private const string InstrumentSql = "INSERT INTO instrument (name, scale) VALUES (@name, @scale) RETURNING id";

    /// <summary>Gives the rows the next numbers, none that a record that is gone had; nobody else writes while this transaction lasts.</summary>
    private static void Number(SqliteConnection connection, string table, IEnumerable<ImportRow> rows)
    {
        var next = connection.ExecuteScalar<long>("SELECT COALESCE(MAX(seq), 0) + 1 FROM sqlite_sequence WHERE name = @table", new { table });
        foreach (var row in rows)
            row.Id = next++;
    }
}
