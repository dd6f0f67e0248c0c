using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Rackets;
using TagPage.Core.Tags;
using TagPage.Records.DueDates;
using TagPage.Records.Jobs;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Records.Tags;

namespace TagPage.Records.OwnPages;

/// <summary>The rackets of a client's players. Whatever is asked for, it is this client's or it is not there.</summary>
public sealed class OwnPageRacketStore(Database database)
{
    public IReadOnlyList<OwnPageRacket> OfClient(long client) => database.Read(c => Histories.Into(c, c.Query<OwnPageRacket>(OfClientSql, new { client })));

    private const string OfClientSql = $"""
        {Columns}
        WHERE p.client_id = @client
        ORDER BY p.name_key, p.id, r.state IN ('Sold', 'Gone'), r.number
        """;

    public OwnPageRacket? Get(long client, long racket) => database.Read(c => Get(c, client, racket));

    internal static OwnPageRacket? Get(SqliteConnection connection, long client, long racket) =>
        Histories.Into(connection, connection.QuerySingleOrDefault<OwnPageRacket>(Columns + " WHERE r.id = @racket AND p.client_id = @client", new { client, racket }));

    private const string Columns = $"""
        SELECT {ForecastRow.Columns}, r.number, r.tape_colour, r.frame, r.lost_since IS NOT NULL AS is_lost, r.lost_since, r.lost_note,
               p.name AS player, j.id AS job_id, j.state AS job_state, COALESCE(q.expected, 0) AS expected, q.asked_in,
               CASE WHEN c.payer_id IS NULL THEN j.price_minor END AS price_minor,
               CASE WHEN c.payer_id IS NULL THEN j.price_minor - (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.job_id = j.id) END AS to_pay_minor,
               CASE WHEN c.payer_id IS NULL AND j.price_minor IS NOT NULL THEN j.paid_on END AS paid_on, j.promised_for, COALESCE(q.asked_words, '') AS asked_words, COALESCE(q.drop_off_where, '') AS drop_off_where, q.drop_off_by, q.needed_by,
               l.name AS left_at, k.name AS collect_at, j.state = 'Strung' AND s.collect_at IS NOT NULL AND s.brought_at IS NULL AS is_to_bring
        FROM player p
        JOIN client c ON c.id = p.client_id
        JOIN racket r ON r.player_id = p.id
        JOIN forecast f ON f.racket_id = r.id
        LEFT JOIN job j ON j.id = (SELECT MIN(o.id) FROM job o WHERE o.racket_id = r.id AND o.state IN ('Waiting', 'OnMachine', 'Strung'))
        LEFT JOIN job_request q ON q.job_id = j.id
        LEFT JOIN job_stop s ON s.job_id = j.id
        LEFT JOIN stop l ON l.id = s.left_at
        LEFT JOIN stop k ON k.id = s.collect_at
        """;

    /// <summary>The newest <paramref name="most"/> stringings, newest first.</summary>
    public IReadOnlyList<StringingRow> Stringings(long client, long racket, int most) =>
        database.Read(c => c.Query<StringingRow>(StringingsSql, new { client, racket, most }).AsList());

    private const string StringingsSql = $"""
        SELECT {StringingRow.Columns}
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        {StringingRow.Joins}
        WHERE r.id = @racket AND p.client_id = @client AND j.strung_on IS NOT NULL
        ORDER BY j.strung_on DESC, j.id DESC
        LIMIT @most
        """;

    /// <summary>The newest <paramref name="most"/> visits, newest first.</summary>
    public IReadOnlyList<VisitOfTag> Visits(long client, long racket, int most) => database.Read(c => c.Query<VisitOfTag>(VisitsSql, new { client, racket, most }).AsList());

    private const string VisitsSql = $"""
        SELECT {VisitOfTag.Columns}
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE r.id = @racket AND p.client_id = @client AND j.done_on IS NOT NULL
        ORDER BY j.done_on DESC, j.id DESC
        LIMIT @most
        """;

    /// <summary>The price of what "the same again" repeats; null where none is noted, and where somebody else pays.</summary>
    public long? LastPrice(long client, long racket) => database.Read(c => c.QuerySingleOrDefault<long?>(LastPriceSql, new { client, racket }));

    private const string LastPriceSql = $"""
        SELECT CASE WHEN c.payer_id IS NULL THEN j.price_minor END
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        JOIN job j ON j.id = {RequestedJob.Last}
        WHERE r.id = @racket AND c.id = @client
        """;

    /// <summary>The client's own racket behind a live tag, or null.</summary>
    public long? OfTag(long client, TagCode code) => database.Read(c => c.QuerySingleOrDefault<long?>(OfTagSql, new { client, code }));

    private const string OfTagSql = """
        SELECT r.id
        FROM tag t
        JOIN racket r ON r.id = t.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE t.code = @code AND t.state = 'Live' AND p.client_id = @client AND r.state <> 'Sold'
        """;

    /// <summary>What it measured, newest first, as its own household sees it: without the shop's note, which is not read.</summary>
    public IReadOnlyList<SpecEntry> Specs(long client, long racket) => database.Read(c => c.Query<SpecEntry>(SpecsSql, new { client, racket }).AsList());

    private const string SpecsSql = """
        SELECT s.measured_on, s.kind, s.weight, s.weight_unit, s.length, s.length_unit, s.balance, s.balance_unit, s.tip_weight, s.swing_weight, s.swing_source,
               s.pendulum_axis, s.pendulum_period_s, s.pendulum_off_s, s.weight_off_g, s.balance_off_mm, s.swing_weight_off,
               s.weight_balance_r, s.weight_swing_r, s.balance_swing_r, s.strung
        FROM spec s
        JOIN racket r ON r.id = s.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE s.racket_id = @racket AND p.client_id = @client
        ORDER BY s.measured_on DESC, s.id DESC
        """;

    /// <summary>What was added to it, what is still on it first.</summary>
    public IReadOnlyList<OwnPageMass> Masses(long client, long racket) => database.Read(c => c.Query<OwnPageMass>(MassesSql, new { client, racket }).AsList());

    private const string MassesSql = """
        SELECT a.place, a.grams, a.at_cm, a.material, a.added_on, a.removed_on
        FROM added_mass a
        JOIN racket r ON r.id = a.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE a.racket_id = @racket AND p.client_id = @client
        ORDER BY a.removed_on IS NOT NULL, a.added_on DESC, a.id
        """;

    /// <summary>The roles a client may choose. What was sold stays sold.</summary>
    public static readonly RacketState[] Roles = [RacketState.InTurn, RacketState.Spare, RacketState.Resting, RacketState.Gone];

    public Outcome SetRole(Who who, long racket, RacketState role) => database.Write<Outcome>(c =>
        !c.ExecuteScalar<bool>(MaySql, new { who.IsShop, who.ClientId, racket }) ? new Outcome.Absent()
        : !Roles.Contains(role) ? new Outcome.Refused(new RoleNotTheirs())
        : c.Execute(SetRoleSql, new { racket, Role = role.ToString() }) == 1 ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string MaySql = $"SELECT EXISTS (SELECT 1 FROM racket r WHERE r.id = @racket AND r.state <> 'Sold' AND {Who.ChangesRacket})";

    private const string SetRoleSql = "UPDATE racket SET version = version + (state <> @Role), state = @Role WHERE id = @racket";
}
