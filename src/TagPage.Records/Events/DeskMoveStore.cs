using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Deeds;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>
/// What becomes of a racket at the desk. Each move starts from the state it was offered in: of two who press at the same
/// time one gets the racket, and the other is told who has it. Done tells the desk number.
/// </summary>
public sealed class DeskMoveStore(Database database, ShopClock clock)
{
    /// <summary>A technician takes a racket that waits; a second one only where that was asked about.</summary>
    public Outcome Take(Who who, long eventId, int number, long technician, bool asSecond = false) => database.AtDesk(who, eventId, (c, desk) =>
    {
        if (Find(c, eventId, number) is not { } entry)
            return new Outcome.Absent();
        if (!c.ExecuteScalar<bool>(IsThereSql, new { technician, eventId }))
            return new Outcome.Refused(new TechnicianNotThere());
        if (!asSecond && entry.State == JobState.Waiting && c.QueryFirstOrDefault<StillOnMachine>(OnMachineSql, new { technician, eventId, number }) is { } first)
            return new Outcome.Refused(first);
        var taken = 0;
        DeskChange.Make(c, who, desk, clock.Minute, () => taken = c.Execute(TakeSql, new { entry.JobId, technician, Now = clock.Minute }));
        if (taken > 0)
            JobDeedStore.Note(c, who, entry.JobId, JobDeed.Started, clock.Now);
        return taken > 0 ? new Outcome.Done(number) : MovedOn(entry);
    });

    private const string IsThereSql = "SELECT EXISTS (SELECT 1 FROM event_technician WHERE id = @technician AND event_id = @eventId AND away = 0)";

    private const string OnMachineSql = """
        SELECT @number AS number, t.id AS technician, t.name AS by, e.number AS first
        FROM event_entry e
        JOIN job j ON j.id = e.job_id
        JOIN event_technician t ON t.id = e.technician_id
        WHERE e.event_id = @eventId AND t.id = @technician AND j.state = 'OnMachine'
        ORDER BY e.number
        LIMIT 1
        """;

    private const string TakeSql = """
        UPDATE event_entry SET technician_id = @technician, started_at = @Now
        WHERE job_id = (SELECT id FROM job WHERE id = @JobId AND state = 'Waiting');
        UPDATE job
        SET state = 'OnMachine', version = version + 1,
            strung_by = (SELECT name FROM event_technician WHERE id = @technician), machine = (SELECT machine FROM event_technician WHERE id = @technician)
        WHERE id = @JobId AND state = 'Waiting';
        """;

    /// <summary>Off the machine: the strings are in, those before them have ended.</summary>
    public Outcome Strung(Who who, long eventId, int number) => Move(who, eventId, number, JobState.OnMachine, (c, entry) =>
    {
        c.Execute(StrungSql, new { entry.JobId, Now = clock.Minute, clock.Today });
        BedStore.EndFollowed(c, entry.RacketId, BedEnd.CutOut);
        JobDeedStore.Note(c, who, entry.JobId, JobDeed.Strung, clock.Now);
    });

    private const string StrungSql = """
        UPDATE event_entry SET strung_at = @Now WHERE job_id = @JobId;
        UPDATE job SET state = 'Strung', strung_on = @Today, version = version + 1 WHERE id = @JobId;
        """;

    /// <summary>Back to the queue: put down half-way, or pressed by mistake.</summary>
    public Outcome PutBack(Who who, long eventId, int number) => Move(who, eventId, number, JobState.OnMachine, (c, entry) =>
        c.Execute(PutBackSql, new { entry.JobId }));

    private const string PutBackSql = """
        UPDATE event_entry SET technician_id = NULL, started_at = NULL WHERE job_id = @JobId;
        UPDATE job SET state = 'Waiting', version = version + 1 WHERE id = @JobId;
        """;

    /// <summary>Given to the player. Without a kind of payment what is not paid stays on their account.</summary>
    public Outcome HandOut(Who who, long eventId, int number, PaymentMethod? paid) => Move(who, eventId, number, JobState.Strung, (c, entry) =>
        HandOut(c, who, entry, paid is null ? null : Pay(c, who, entry, paid)));

    /// <summary>Given to the player, and paid from what whoever pays for it has in credit.</summary>
    public Outcome HandOutFromCredit(Who who, long eventId, int number) => Move(who, eventId, number, JobState.Strung, (c, entry) =>
        HandOut(c, who, entry, Pay(c, who, entry, null)));

    private Refusal? HandOut(SqliteConnection connection, Who who, EntryRow entry, Refusal? unpaid)
    {
        if (unpaid is not null)
            return unpaid;
        connection.Execute(HandOutSql, new { entry.JobId, Now = clock.Minute, clock.Today });
        JobDeedStore.Note(connection, who, entry.JobId, JobDeed.HandedOut, clock.Now);
        return null;
    }

    private const string HandOutSql = """
        UPDATE event_entry SET handed_at = @Now, moved_from = NULL WHERE job_id = @JobId;
        UPDATE job
        SET state = 'Collected', collected_on = @Today, version = version + 1
        WHERE id = @JobId;
        """;

    /// <summary>Paid after it was handed out; done twice it is done.</summary>
    public Outcome Pay(Who who, long eventId, int number, PaymentMethod method) => Move(who, eventId, number, JobState.Collected, (c, entry) => Pay(c, who, entry, method));

    /// <summary>The same from credit.</summary>
    public Outcome PayFromCredit(Who who, long eventId, int number) => Move(who, eventId, number, JobState.Collected, (c, entry) => Pay(c, who, entry, null));

    private Refusal? Pay(SqliteConnection connection, Who who, EntryRow entry, PaymentMethod? method) => entry.PaidOn is not null ? null
        : PaymentLineStore.Pay(connection, ShareStore.Of(connection, entry.JobId)!, new PaymentEntry { PaidOn = clock.Today, Method = method }, who, (clock.Now, clock.Today));

    /// <summary>What whoever pays for a racket at the desk has in credit.</summary>
    public long? CreditFor(Who who, long eventId, int number) => database.Read(c =>
        EventStore.Get(c, who, eventId) is not null && Find(c, eventId, number) is { } entry ? ShareStore.Free(c, ShareStore.Of(c, entry.JobId)!.Party).Sum(free => free.Free) : (long?)null);

    /// <summary>Taken away unstrung. Its number stays its own.</summary>
    public Outcome Withdraw(Who who, long eventId, int number) => Move(who, eventId, number, JobState.Waiting, (c, entry) =>
    {
        c.Execute("UPDATE job SET state = 'Cancelled', version = version + 1 WHERE id = @JobId", new { entry.JobId });
        ShareStore.Settle(c, entry.JobId, who, clock.Now);
        JobDeedStore.Note(c, who, entry.JobId, JobDeed.Cancelled, clock.Now);
    });

    /// <summary>Before all but those on court, or in its turn again. Whom it makes late keeps a moved promise.</summary>
    public Outcome PullForward(Who who, long eventId, int number, bool forward) => Move(who, eventId, number, JobState.Waiting, (c, entry) =>
        c.Execute(ForwardSql, new { entry.JobId, forward }));

    private const string ForwardSql = """
        UPDATE event_entry SET pulled_forward = @forward WHERE job_id = @JobId;
        UPDATE job SET version = version + 1 WHERE id = @JobId;
        """;

    /// <summary>Its player stands on court without it, or no longer.</summary>
    public Outcome PutOnCourt(Who who, long eventId, int number, bool onCourt) => Move(who, eventId, number, JobState.Waiting, (c, entry) =>
        c.Execute(OnCourtSql, new { entry.JobId, onCourt }));

    private const string OnCourtSql = """
        UPDATE event_entry SET on_court = @onCourt WHERE job_id = @JobId;
        UPDATE job SET version = version + 1 WHERE id = @JobId;
        """;

    /// <summary>Notes where it lies, as long as it is at the desk.</summary>
    public Outcome Lay(Who who, long eventId, int number, string place) => database.AtDesk(who, eventId, (c, _) =>
        Find(c, eventId, number) is not { } entry ? new Outcome.Absent()
        : c.Execute(LaySql, new { entry.JobId, place }) == 1 ? new Outcome.Done(number) : MovedOn(entry));

    private const string LaySql = """
        UPDATE event_entry SET lies = @place WHERE job_id = (SELECT id FROM job WHERE id = @JobId AND state IN ('Waiting', 'OnMachine', 'Strung'))
        """;

    /// <summary>The owner of a racket whose promise was moved knows; done twice it is done.</summary>
    public Outcome Told(Who who, long eventId, int number) => database.AtDesk(who, eventId, (c, _) =>
        c.Execute("UPDATE event_entry SET moved_from = NULL WHERE event_id = @eventId AND number = @number", new { eventId, number }) == 1
            ? new Outcome.Done(number) : new Outcome.Absent());

    /// <summary>
    /// One that was promised for after its match is promised for the match, where the plan has it ready by then; its owner
    /// knows. Done twice it is done.
    /// </summary>
    public Outcome PromiseMatch(Who who, long eventId, int number) => database.AtDesk(who, eventId, (c, desk) =>
    {
        if (DeskStore.Of(c, desk, clock.Minute) is var board && board.Of(number) is not { } entry)
            return new Outcome.Absent();
        if (entry.State != JobState.Waiting)
            return MovedOn(entry);
        if (board.ReadyAt(entry) > entry.NeededBy)
            return new Outcome.Refused(new MatchOutOfReach(number));
        DeskChange.Make(c, who, desk, clock.Minute, () => c.Execute(PromiseMatchSql, new { entry.JobId }), number);
        return new Outcome.Done(number);
    });

    private const string PromiseMatchSql = """
        UPDATE event_entry SET promised = needed_by, moved_from = NULL WHERE job_id = @JobId AND needed_by < promised
        """;

    private Outcome Move(Who who, long eventId, int number, JobState from, Action<SqliteConnection, EntryRow> act) => Move(who, eventId, number, from, (c, entry) =>
    {
        act(c, entry);
        return null;
    });

    /// <param name="who">Who works at the desk.</param>
    /// <param name="eventId">Of the desk.</param>
    /// <param name="number">Desk number.</param>
    /// <param name="from">The state in which this can be done.</param>
    /// <param name="act">Does it, or says why not with nothing written.</param>
    private Outcome Move(Who who, long eventId, int number, JobState from, Func<SqliteConnection, EntryRow, Refusal?> act) => database.AtDesk(who, eventId, (c, desk) =>
    {
        if (Find(c, eventId, number) is not { } entry)
            return new Outcome.Absent();
        if (entry.State != from)
            return MovedOn(entry);
        Refusal? why = null;
        DeskChange.Make(c, who, desk, clock.Minute, () =>
        {
            why = act(c, entry);
            return number;
        });
        return why is null ? new Outcome.Done(number) : new Outcome.Refused(why);
    });

    private static EntryRow? Find(SqliteConnection connection, long eventId, int number) =>
        connection.QuerySingleOrDefault<EntryRow>(FindSql, new { eventId, number });

    private const string FindSql = EntryRow.Select + " WHERE e.event_id = @eventId AND e.number = @number";

    private static Outcome.Refused MovedOn(EntryRow entry) => new(new EntryMovedOn(entry.Number, entry.State, entry.StrungBy));
}
