using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Deeds;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>
/// Gives a ticket that was written for the wrong racket to the right one. Its order, days, readings, price and payment go with it;
/// hours noted, specs and tags belong to the racket and stay. Only the shop may.
/// </summary>
public sealed class JobRacketStore(Database database, TimeProvider clock)
{
    public Outcome Move(Who who, long id, MovedJobEntry input) => database.Write<Outcome>(c =>
    {
        if (JobStore.Get(c, who, id) is not { } job || c.QuerySingleOrDefault<Target>(TargetSql, new { input.RacketId }) is not { } racket)
            return new Outcome.Absent();
        if (job.Version != input.Version)
            return Outcome.Stale;
        if (WhyNot(c, job, racket) is { } why)
            return new Outcome.Refused(why);
        Move(c, job, racket);
        JobDeedStore.Note(c, who, id, JobDeed.Moved, clock.GetUtcNow());
        return new Outcome.Done(id);
    });

    private sealed record Target
    {
        public long Id { get; init; }
        public long ClientId { get; init; }
    }

    private const string TargetSql = """
        SELECT r.id, p.client_id
        FROM racket r
        JOIN player p ON p.id = r.player_id
        WHERE r.id = @RacketId
        """;

    private static Refusal? WhyNot(SqliteConnection connection, JobRow job, Target racket)
    {
        if (racket.Id == job.RacketId)
            return new SameRacket();
        if (racket.ClientId != job.ClientId && connection.ExecuteScalar<bool>(IsTheirsSql, new { job.Id }))
            return new ClientSpokeOfIt(job.Client);
        return Clash(connection, job, racket);
    }

    // A wish and a feeling are one household's: another would read them on its own page, and take them away with its data.
    private const string IsTheirsSql = """
        SELECT EXISTS (SELECT 1 FROM job_request WHERE job_id = @Id) OR EXISTS (SELECT 1 FROM feel WHERE job_id = @Id)
        """;

    private sealed record Other
    {
        public long Ticket { get; init; }
        public DateOnly StrungOn { get; init; }
    }

    private static InItThen? Clash(SqliteConnection connection, JobRow job, Target racket) =>
        connection.QueryFirstOrDefault<Other>(ClashSql, new { racket = racket.Id, job.StrungOn, job.EndedOn, OwnEnd = job.EndedHow is BedEnd.Wear or BedEnd.Mishit or BedEnd.Grommet or BedEnd.Machine })
            is { } other ? new InItThen(other.Ticket, other.StrungOn) : null;

    /// <summary>A racket has one bed at a time: strings whose own end somebody noted, broken and not cut out for others, were in until then.</summary>
    private const string ClashSql = """
        SELECT ticket, strung_on
        FROM job
        WHERE racket_id = @racket AND strung_on IS NOT NULL
          AND ((strung_on <= @StrungOn AND ended_on > @StrungOn AND ended_how NOT IN ('CutOut', 'Unknown'))
               OR (@OwnEnd AND strung_on > @StrungOn AND strung_on < @EndedOn))
        ORDER BY strung_on
        LIMIT 1
        """;

    private static void Move(SqliteConnection connection, JobRow job, Target racket)
    {
        if (job.StrungOn is { } left)
            BedStore.Leave(connection, job.RacketId, job.Id, left);
        connection.Execute(MoveSql, new { job.Id, racket = racket.Id, OtherClient = racket.ClientId != job.ClientId });
        if (job.StrungOn is not { } strungOn)
            return;
        BedStore.EndBefore(connection, racket.Id, job.Id, strungOn);
        BedStore.EndFollowed(connection, racket.Id, BedEnd.Unknown);
    }

    // Hours were the other racket's, and so was the date on the label. Another client was not told that it is ready.
    private const string MoveSql = """
        UPDATE job
        SET racket_id = @racket, label_date = NULL, hours_played = NULL, told_ready_at = CASE WHEN @OtherClient THEN NULL ELSE told_ready_at END,
            version = version + 1
        WHERE id = @Id;
        UPDATE reading SET hours = NULL WHERE job_id = @Id;
        """;
}
