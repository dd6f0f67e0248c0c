using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Machines;

/// <summary>Stringing machines and the log of their checks. The owner sets them up; whoever works at the bench checks them.</summary>
public sealed class MachineStore(Database database, ShopClock clock)
{
    /// <summary>Those in use first.</summary>
    public IReadOnlyList<MachineRow> List() => database.Read(c => c.Query<MachineRow>($"{Select} ORDER BY m.is_retired, m.name COLLATE NOCASE").AsList());

    /// <summary>Those whose check is overdue.</summary>
    public IReadOnlyList<MachineRow> Overdue()
    {
        var today = clock.Today;
        return [.. List().Where(machine => machine.IsOverdue(today))];
    }

    public MachineRow? Get(long id) => database.Read(c => Get(c, id));

    private static MachineRow? Get(SqliteConnection connection, long id) => connection.QuerySingleOrDefault<MachineRow>($"{Select} WHERE m.id = @id", new { id });

    // One that was never checked is due as many days after it was set up.
    private const string Select = """
        SELECT m.id, m.name, m.kind, m.every_days, m.is_retired, m.version, k.checked_on,
               CASE WHEN m.is_retired = 0 THEN date(COALESCE(k.checked_on, m.made_on), m.every_days || ' days') END AS due_on
        FROM machine m
        LEFT JOIN (SELECT machine_id, MAX(checked_on) AS checked_on FROM machine_check GROUP BY machine_id) k ON k.machine_id = m.id
        """;

    public Outcome Add(Who who, MachineEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteOnceAsOwner(who, input.FormKey, now, c =>
            Taken(c, 0, input) ?? (Outcome)new Outcome.Done(c.ExecuteScalar<long>(AddSql, Values(0, input, today))));
    }

    private const string AddSql = "INSERT INTO machine (name, kind, every_days, is_retired, made_on) VALUES (@Name, @Kind, @EveryDays, @IsRetired, @today) RETURNING id";

    public Outcome Change(Who who, long id, MachineEntry input) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, id) is null)
            return new Outcome.Absent();
        if (Taken(c, id, input) is { } taken)
            return taken;
        return c.Execute(ChangeSql, Values(id, input, default)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE machine SET name = @Name, kind = @Kind, every_days = @EveryDays, is_retired = @IsRetired, version = version + 1 WHERE id = @id AND version = @Version
        """;

    private static Outcome.Refused? Taken(SqliteConnection connection, long id, MachineEntry input) =>
        connection.ExecuteScalar<bool>(TakenSql, new { id, input.Name }) ? new Outcome.Refused(new MachineNameTaken()) : null;

    private const string TakenSql = "SELECT EXISTS (SELECT 1 FROM machine WHERE name = @Name COLLATE NOCASE AND id <> @id)";

    private static object Values(long id, MachineEntry input, DateOnly today) =>
        new { id, input.Version, input.Name, Kind = input.Kind.ToString(), input.EveryDays, input.IsRetired, today };

    /// <summary>The newest first.</summary>
    public IReadOnlyList<CheckRow> Checks(long id) => database.Read(c => c.Query<CheckRow>(ChecksSql, new { id }).AsList());

    private const string ChecksSql = $"""
        SELECT k.id, k.checked_on, k.reference, k.measured, k.unit, k.note, a.name AS by
        FROM machine_check k
        LEFT JOIN account a ON a.id = k.made_by AND {AccountStore.Several}
        WHERE k.machine_id = @id
        ORDER BY k.checked_on DESC, k.id DESC
        LIMIT 200
        """;

    /// <summary>A check stays as it is written; a mistaken one is followed by another.</summary>
    public Outcome Check(Who who, long id, CheckEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteOnceAsShop(who, input.FormKey, now, c =>
            Get(c, id) is null ? new Outcome.Absent()
            : input.CheckedOn > today ? new Outcome.Refused(new CheckInFuture())
            : new Outcome.Done(c.ExecuteScalar<long>(CheckSql, new
            {
                id,
                input.CheckedOn,
                input.Reference,
                input.Measured,
                Unit = input.Unit.ToString(),
                Note = input.Note ?? "",
                MadeBy = who.Name,
            })));
    }

    private const string CheckSql = """
        INSERT INTO machine_check (machine_id, checked_on, reference, measured, unit, note, made_by)
        VALUES (@id, @CheckedOn, @Reference, @Measured, @Unit, @Note, @MadeBy)
        RETURNING id
        """;
}
