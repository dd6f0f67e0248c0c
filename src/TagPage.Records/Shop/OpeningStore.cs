using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>Writes when the shop is open. Only the shop may.</summary>
public sealed class OpeningStore(Database database, ShopClock clock)
{
    /// <summary>What is closed for longer is another shop; and what lies further ahead is a typo in the year.</summary>
    private const int MostDays = 366, MostYearsAhead = 3;

    /// <summary>Counts the shop's version, like its other settings.</summary>
    public Outcome SaveWeek(Who who, OpeningEntry input) => database.WriteAsOwner(who, c =>
    {
        if (c.Execute("UPDATE shop SET version = version + 1 WHERE id = 1 AND version = @Version", new { input.Version }) != 1)
            return Outcome.Stale;
        c.Execute("DELETE FROM opening_span");
        AddWeek(c, input.Week);
        return new Outcome.Done(1);
    });

    /// <summary>In the caller's transaction.</summary>
    internal static void AddWeek(SqliteConnection connection, IEnumerable<OpeningSpan> week) => connection.Execute(AddSpanSql, week);

    private const string AddSpanSql = "INSERT INTO opening_span (weekday, opens_at, closes_at) VALUES (@Weekday, @OpensAt, @ClosesAt)";

    public Outcome AddClosed(Who who, ClosedDaysEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteOnceAsOwner(who, input.FormKey, now, c =>
        {
            var toOn = input.ToOn ?? input.FromOn;
            if (toOn < input.FromOn)
                return new Outcome.Refused(new ClosedBackwards());
            if (toOn < today || toOn > today.AddYears(MostYearsAhead) || toOn > input.FromOn.AddDays(MostDays))
                return new Outcome.Refused(new ClosedFarAway());
            return new Outcome.Done(c.ExecuteScalar<long>(AddClosedSql, new { input.FromOn, toOn, Note = input.Note ?? "" }));
        });
    }

    private const string AddClosedSql = "INSERT INTO closed_days (from_on, to_on, note) VALUES (@FromOn, @toOn, @Note) RETURNING id";

    public Outcome RemoveClosed(Who who, long id) => database.WriteAsOwner(who, c =>
        c.Execute("DELETE FROM closed_days WHERE id = @id", new { id }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());
}
