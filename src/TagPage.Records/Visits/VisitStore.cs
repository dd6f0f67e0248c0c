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

    private const string GetSql = $"SELECT {VisitRow.Columns} FROM job j WHERE j.id = @id AND j.mains_id IS NULL AND @IsShop";

    /// <summary>Those that wait first, then the newest.</summary>
    public IReadOnlyList<VisitRow> OfRacket(Who who, long racket) => database.Read(c => c.Query<VisitRow>(OfRacketSql, new { who.IsShop, racket }).AsList());

    private const string OfRacketSql = $"SELECT {VisitRow.Columns} FROM job j WHERE j.racket_id = @racket AND j.mains_id IS NULL AND j.state <> 'Cancelled' AND @IsShop ORDER BY j.done_on IS NOT NULL, j.done_on DESC, j.id DESC";

    /// <summary>One that waits on the bench, or one that was done while the client waited.</summary>
    public Outcome Add(Who who, long racket, VisitEntry input)
    {
        var (now, today, shop) = (clock.Now, clock.Today, shops.Get());
        return database.WriteOnceAsShop(who, input.FormKey, now, c =>
        {
            if (NewJobStore.Racket(c, who, racket) is null)
                return new Outcome.Absent();
            if ((input.Fault(today, shop, today) ?? (input.DoneOn is null ? JobStopStore.WhyNot(c, input.Stops, null) : null)) is { } why)
                return new Outcome.Refused(why);
            var job = c.ExecuteScalar<long>(AddSql, new { racket, input.DoneOn, Promised = input.DoneOn is null ? input.PromisedFor : null, Today = today, Note = input.Note ?? "" });
            SetWorks(c, job, input.Works);
            if (input.DoneOn is null)
                JobStopStore.Set(c, job, input.Stops);
            ChargeLineStore.Replace(c, job, PriceListStore.Get(c).OfVisit(input.Extras, input.Price is { } price ? Currencies.ToMinor(price, shop.Currency) : null), who, now);
            ShareStore.Settle(c, job, who, now);
            JobDeedStore.Note(c, who, job, input.DoneOn is null ? JobDeed.TakenIn : JobDeed.Done, now);
            return new Outcome.Done(job);
        });
    }

    // Who supplies strings, and in which unit, is asked of no visit; the columns are of every job.
    private const string AddSql = $"""
        INSERT INTO job (ticket, racket_id, state, mains_supplied_by, crosses_supplied_by, tension_unit, received_on, promised_for, collected_on, done_on, note)
        VALUES ({RequestedJob.NextTicket}, @racket, CASE WHEN @DoneOn IS NULL THEN 'Waiting' ELSE 'Collected' END, 'Client', 'Client', 'Lb', COALESCE(@DoneOn, @Today), @Promised, @DoneOn, @DoneOn, @Note)
        RETURNING id
        """;

    private static void SetWorks(SqliteConnection connection, long job, IEnumerable<VisitWork> works)
    {
        connection.Execute("DELETE FROM visit_work WHERE job_id = @job", new { job });
        connection.Execute("INSERT INTO visit_work (job_id, work) VALUES (@job, @work)", works.Distinct().Select(work => new { job, work = work.ToString() }));
    }

    /// <summary>The work of one that waited is done, and the racket ready to be collected.</summary>
    public Outcome Done(Who who, long id, DateOnly on)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteAsShop(who, c =>
        {
            if (Get(c, who, id) is not { } visit)
                return new Outcome.Absent();
            if (visit.State != JobState.Waiting)
                return new Outcome.Refused(new JobMovedOn(visit.Ticket, visit.State) { IsVisit = true });
            if (on > today)
                return new Outcome.Refused(new VisitInFuture());
            if (on < visit.ReceivedOn)
                return new Outcome.Refused(new DoneOutOfOrder(visit.ReceivedOn, null));
            JobStopStore.Fetched(c, id, now);
            c.Execute(DoneSql, new { id, on, now });
            ShareStore.Settle(c, id, who, now);
            JobDeedStore.Note(c, who, id, JobDeed.Done, now);
            return new Outcome.Done(id);
        });
    }

    private const string DoneSql = "UPDATE job SET state = 'Strung', done_on = @on, moved_at = @now, version = version + 1 WHERE id = @id";

    /// <summary>What it cost is changed where that of every ticket is. One that was done in one go has its days moved together.</summary>
    public Outcome Change(Who who, long id, VisitEntry input)
    {
        var (now, today, shop) = (clock.Now, clock.Today, shops.Get());
        return database.WriteAsShop(who, c =>
        {
            if (Get(c, who, id) is not { } visit)
                return new Outcome.Absent();
            if (input.Version != visit.Version)
                return Outcome.Stale;
            var waits = visit.State == JobState.Waiting;
            if ((DaysFault(visit, input) ?? input.Fault(today, shop, visit.ReceivedOn) ?? (waits ? JobStopStore.WhyNot(c, input.Stops, JobStore.GetWithVisits(c, who, id)) : null)) is { } why)
                return new Outcome.Refused(why);
            if (c.Execute(ChangeSql, new { id, input.Version, input.DoneOn, input.PromisedFor, visit.IsOfOneDay, Note = input.Note ?? "" }) == 0)
                return Outcome.Stale;
            SetWorks(c, id, input.Works);
            if (waits)
                JobStopStore.Set(c, id, input.Stops);
            ShareStore.Settle(c, id, who, now);
            JobDeedStore.Note(c, who, id, JobDeed.Changed, now);
            return new Outcome.Done(id);
        });
    }

    private static Refusal? DaysFault(VisitRow visit, VisitEntry input) =>
        visit.DoneOn is null ? null
        : input.DoneOn is not { } done ? new DoneWithoutDay()
        : !visit.IsOfOneDay && (done < visit.ReceivedOn || done > visit.CollectedOn) ? new DoneOutOfOrder(visit.ReceivedOn, visit.CollectedOn)
        : null;

    private const string ChangeSql = """
        UPDATE job
        SET received_on = CASE WHEN @IsOfOneDay THEN @DoneOn ELSE received_on END, collected_on = CASE WHEN @IsOfOneDay THEN @DoneOn ELSE collected_on END,
            promised_for = CASE WHEN done_on IS NULL THEN @PromisedFor ELSE promised_for END, done_on = CASE WHEN done_on IS NULL THEN NULL ELSE @DoneOn END,
            note = @Note, version = version + 1
        WHERE id = @id AND version = @Version
        """;

    /// <summary>One that was written by mistake, as long as no money came in for it, it is on no bill and has no photos. Only the owner may. Done tells the racket.</summary>
    public Outcome Delete(Who who, long id) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, who, id) is not { } visit)
            return new Outcome.Absent();
        if (c.ExecuteScalar<bool>(InTheBooksSql, new { id }))
            return new Outcome.Refused(new VisitInTheBooks());
        if (c.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM photo WHERE job_id = @id)", new { id }))
            return new Outcome.Refused(new PhotosOnIt());
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
