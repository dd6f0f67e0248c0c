using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Deeds;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Visits;

/// <summary>
/// Visits: work on a racket whose strings stay in it. Each is a job without strings, so that it has a ticket, a price and payments
/// like any other, and is none to whatever counts stringings. Only the shop may.
/// </summary>
public sealed class VisitStore(Database database, ShopStore shops, ShopClock clock)
{
    public VisitRow? Get(Who who, long id) => database.Read(c => Get(c, who, id));

    private static VisitRow? Get(SqliteConnection connection, Who who, long id) => connection.QuerySingleOrDefault<VisitRow>(GetSql, new { who.IsShop, id });

    private const string GetSql = $"SELECT {VisitRow.Columns} FROM job j WHERE j.id = @id AND j.done_on IS NOT NULL AND @IsShop";

    /// <summary>The newest first.</summary>
    public IReadOnlyList<VisitRow> OfRacket(Who who, long racket) => database.Read(c => c.Query<VisitRow>(OfRacketSql, new { who.IsShop, racket }).AsList());

    private const string OfRacketSql = $"SELECT {VisitRow.Columns} FROM job j WHERE j.racket_id = @racket AND j.done_on IS NOT NULL AND @IsShop ORDER BY j.done_on DESC, j.id DESC";

    public Outcome Add(Who who, long racket, VisitEntry input)
    {
        var (now, today, shop) = (clock.Now, clock.Today, shops.Get());
        return database.WriteOnceAsShop(who, input.FormKey, now, c =>
        {
            if (NewJobStore.Racket(c, who, racket) is null)
                return new Outcome.Absent();
            if (input.Fault(today, shop) is { } why)
                return new Outcome.Refused(why);
            var job = c.ExecuteScalar<long>(AddSql, new { racket, input.DoneOn, Note = input.Note ?? "" });
            SetWorks(c, job, input.Works);
            ChargeLineStore.Replace(c, job, PriceListStore.Get(c).OfVisit(input.Extras, input.Price is { } price ? Currencies.ToMinor(price, shop.Currency) : null), who, now);
            ShareStore.Settle(c, job, who, now);
            JobDeedStore.Note(c, who, job, JobDeed.Done, now);
            return new Outcome.Done(job);
        });
    }

    // Who supplies strings, and in which unit, is asked of no visit; the columns are of every job.
    private const string AddSql = $"""
        INSERT INTO job (ticket, racket_id, state, mains_supplied_by, crosses_supplied_by, tension_unit, received_on, collected_on, done_on, note)
        VALUES ({RequestedJob.NextTicket}, @racket, 'Collected', 'Client', 'Client', 'Lb', @DoneOn, @DoneOn, @DoneOn, @Note)
        RETURNING id
        """;

    private static void SetWorks(SqliteConnection connection, long job, IEnumerable<VisitWork> works)
    {
        connection.Execute("DELETE FROM visit_work WHERE job_id = @job", new { job });
        connection.Execute("INSERT INTO visit_work (job_id, work) VALUES (@job, @work)", works.Distinct().Select(work => new { job, work = work.ToString() }));
    }

    /// <summary>What it cost is changed where that of every ticket is.</summary>
    public Outcome Change(Who who, long id, VisitEntry input)
    {
        var (now, today, shop) = (clock.Now, clock.Today, shops.Get());
        return database.WriteAsShop(who, c =>
        {
            if (Get(c, who, id) is null)
                return new Outcome.Absent();
            if (input.Fault(today, shop) is { } why)
                return new Outcome.Refused(why);
            if (c.Execute(ChangeSql, new { id, input.Version, input.DoneOn, Note = input.Note ?? "" }) == 0)
                return Outcome.Stale;
            SetWorks(c, id, input.Works);
            ShareStore.Settle(c, id, who, now);
            JobDeedStore.Note(c, who, id, JobDeed.Changed, now);
            return new Outcome.Done(id);
        });
    }

    private const string ChangeSql = """
        UPDATE job SET received_on = @DoneOn, collected_on = @DoneOn, done_on = @DoneOn, note = @Note, version = version + 1 WHERE id = @id AND version = @Version
        """;

    /// <summary>One that was written by mistake, as long as no money came in for it and it is on no bill. Only the owner may. Done tells the racket.</summary>
    public Outcome Delete(Who who, long id) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, who, id) is not { } visit)
            return new Outcome.Absent();
        if (c.ExecuteScalar<bool>(InTheBooksSql, new { id }))
            return new Outcome.Refused(new VisitInTheBooks());
        c.Execute(DeleteSql, new { id, visit.Ticket });
        return new Outcome.Done(visit.RacketId);
    });

    private const string InTheBooksSql = """
        SELECT EXISTS (SELECT 1 FROM payment_share WHERE job_id = @id) OR EXISTS (SELECT 1 FROM bill_line WHERE job_id = @id)
        """;

    private const string DeleteSql = """
        INSERT INTO deleted_ticket (ticket) VALUES (@Ticket) ON CONFLICT DO NOTHING;
        DELETE FROM job WHERE id = @id;
        """;
}
