using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Reads one job whole.</summary>
public sealed class JobStore(Database database)
{
    public JobRow? Get(long id) => database.Read(c => Get(c, id));

    internal static JobRow? Get(SqliteConnection connection, long id) => connection.QuerySingleOrDefault<JobRow>(GetSql, new { id });

    private const string GetSql = """
        SELECT j.id, j.ticket, j.state, j.version,
               j.racket_id, r.number, r.frame, r.tape_colour, r.sport, r.pattern_mains, r.pattern_crosses,
               p.name AS player, p.junior, c.id AS client_id, c.name AS client, c.mail AS client_mail, c.phone AS client_phone, y.name AS payer,
               j.mains_id, m.name AS mains_name, m.material AS mains_material, m.gauge_mm AS mains_gauge_mm,
               j.mains_supplied_by, j.mains_tension,
               j.crosses_id, x.name AS crosses_name, x.material AS crosses_material, x.gauge_mm AS crosses_gauge_mm,
               j.crosses_supplied_by, j.crosses_tension, j.tension_unit, j.pre_stretch_percent, j.pieces,
               j.received_on, j.received_where, j.promised_for, j.strung_on, j.strung_by, j.machine, j.collected_on,
               j.price_minor, j.paid_on, j.note, j.wish, j.expected, j.asked_by_client, j.drop_off_where, j.drop_off_by, j.needed_by, j.told_ready_at, j.ended_on, j.ended_how,
               g.value AS reading, g.instrument_id, i.name AS instrument
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        LEFT JOIN payer y ON y.id = c.payer_id
        JOIN string_kind m ON m.id = j.mains_id
        JOIN string_kind x ON x.id = j.crosses_id
        LEFT JOIN reading g ON g.job_id = j.id AND g.first = 1
        LEFT JOIN instrument i ON i.id = g.instrument_id
        WHERE j.id = @id
        """;
}
