using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Stock;

/// <summary>What is left of the shop’s strings. Only the shop sees and writes it; what jobs take is <see cref="StockKeeper"/>’s.</summary>
public sealed class StockStore(Database database, ShopClock clock)
{
    /// <summary>In centimetres; 1,000 km.</summary>
    public const int Most = 100_000_000;

    private const int MostMoves = 200;

    public IReadOnlyList<StockRow> List() => database.Read(c => c.Query<StockRow>(ListSql).AsList());

    public StockRow? Get(long stringId) => database.Read(c => c.QuerySingleOrDefault<StockRow>(GetSql, new { stringId }));

    /// <summary>Numbers of strings that have a price, or that the shop keeps account of.</summary>
    public IReadOnlySet<long> Sold() => database.Read(c => c.Query<long>("SELECT string_id FROM string_price UNION SELECT string_id FROM string_stock").ToHashSet());

    private const string Columns = """
        SELECT s.string_id, k.name, k.gauge_mm, s.unit, s.racket_cm, s.reorder_cm, s.left_cm, s.version,
               (SELECT COUNT(*) FROM job j WHERE j.state IN ('Waiting', 'OnMachine') AND j.mains_id = s.string_id AND j.mains_supplied_by = 'Shop') * (s.racket_cm - s.racket_cm / 2)
               + (SELECT COUNT(*) FROM job j WHERE j.state IN ('Waiting', 'OnMachine') AND j.crosses_id = s.string_id AND j.crosses_supplied_by = 'Shop') * (s.racket_cm / 2) AS waiting_cm,
               (SELECT COALESCE(SUM(m.cost_minor), 0) FROM stock_move m WHERE m.string_id = s.string_id AND m.cost_minor IS NOT NULL) AS cost_minor,
               (SELECT COALESCE(SUM(m.centimetres), 0) FROM stock_move m WHERE m.string_id = s.string_id AND m.cost_minor IS NOT NULL) AS cost_cm
        FROM string_stock s
        JOIN string_kind k ON k.id = s.string_id
        """;

    private const string ListSql = $"{Columns} ORDER BY k.name COLLATE NOCASE, k.gauge_mm";

    private const string GetSql = $"{Columns} WHERE s.string_id = @stringId";

    /// <summary>Of strings of a job that are kept account of: what is left of each.</summary>
    public IReadOnlyList<StockRow> OfJob(long mainsId, long crossesId) =>
        database.Read(c => c.Query<StockRow>(OfJobSql, new { mainsId, crossesId }).AsList());

    private const string OfJobSql = $"{Columns} WHERE s.string_id IN (@mainsId, @crossesId) ORDER BY s.string_id <> @mainsId";

    /// <summary>The newest first.</summary>
    public IReadOnlyList<StockMove> Moves(long stringId) => database.Read(c => c.Query<StockMove>(MovesSql, new { stringId, MostMoves }).AsList());

    private const string MovesSql = """
        SELECT m.kind, m.centimetres, m.cost_minor, m.job_id, j.ticket, m.note, m.made_at,
               SUM(m.centimetres) OVER (ORDER BY m.id) AS left_cm
        FROM stock_move m
        LEFT JOIN job j ON j.id = m.job_id
        WHERE m.string_id = @stringId
        ORDER BY m.id DESC
        LIMIT @MostMoves
        """;

    /// <summary>How many strings there is too little of.</summary>
    public int Low() => database.Read(c => c.ExecuteScalar<int>("SELECT COUNT(*) FROM string_stock WHERE left_cm <= reorder_cm"));

    /// <summary>Begins to keep account of a string, or changes how.</summary>
    public Outcome Keep(Who who, long stringId, StockEntry input)
    {
        var today = clock.Today;
        return database.WriteAsOwner(who, c =>
        {
            if (!c.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM string_kind WHERE id = @stringId)", new { stringId }))
                return new Outcome.Absent();
            var values = new { stringId, Unit = input.Unit.ToString(), input.RacketCm, input.ReorderCm, input.Version, today };
            return c.Execute(input.Version == 0 ? BeginSql : ChangeSql, values) == 1 ? new Outcome.Done(stringId) : Outcome.Stale;
        });
    }

    private const string BeginSql = """
        INSERT INTO string_stock (string_id, unit, racket_cm, reorder_cm, since) VALUES (@stringId, @Unit, @RacketCm, @ReorderCm, @today)
        ON CONFLICT DO NOTHING
        """;

    private const string ChangeSql = """
        UPDATE string_stock SET unit = @Unit, racket_cm = @RacketCm, reorder_cm = @ReorderCm, version = version + 1
        WHERE string_id = @stringId AND version = @Version
        """;

    public Outcome Buy(Who who, long stringId, BoughtEntry input) => Move(who, stringId, input.FormKey, StockMoveKind.Bought, _ => input.Centimetres, input.CostMinor, input.Note);

    /// <summary>What differs from what should be left is written down as a correction, also where nothing differs.</summary>
    public Outcome Count(Who who, long stringId, CountEntry input) => Move(who, stringId, input.FormKey, StockMoveKind.Counted, left => input.Centimetres - left, null, input.Note);

    private Outcome Move(Who who, long stringId, string formKey, StockMoveKind kind, Func<long, long> centimetres, long? costMinor, string? note)
    {
        var now = clock.Now;
        return database.WriteOnceAsOwner(who, formKey, now, c =>
        {
            if (c.QuerySingleOrDefault<long?>("SELECT left_cm FROM string_stock WHERE string_id = @stringId", new { stringId }) is not { } left)
                return new Outcome.Absent();
            var moved = centimetres(left);
            if (Math.Abs(moved) > Most || Math.Abs(left + moved) > Most)
                return new Outcome.Refused(new StockTooLong());
            c.Execute(MoveSql, new { stringId, Kind = kind.ToString(), moved, costMinor, Note = note ?? "", now, MadeBy = who.Name });
            return new Outcome.Done(stringId);
        });
    }

    private const string MoveSql = """
        INSERT INTO stock_move (string_id, kind, centimetres, cost_minor, note, made_at, made_by) VALUES (@stringId, @Kind, @moved, @costMinor, @Note, @now, @MadeBy)
        """;
}
