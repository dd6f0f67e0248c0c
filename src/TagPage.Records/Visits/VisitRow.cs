using TagPage.Core.Jobs;

namespace TagPage.Records.Visits;

/// <summary>Work on a racket without new strings: it waits, is ready to be collected, or was.</summary>
public sealed record VisitRow
{
    /// <summary>SQL: columns of jobs <c>j</c> that are visits.</summary>
    internal const string Columns = """
        j.id, j.ticket, j.version, j.racket_id, j.state, j.received_on, j.promised_for, j.done_on, j.collected_on, j.note, j.price_minor, j.paid_on,
        (SELECT s.left_at FROM job_stop s WHERE s.job_id = j.id) AS left_at_id, (SELECT s.collect_at FROM job_stop s WHERE s.job_id = j.id) AS collect_at_id,
        (SELECT group_concat(w.work, ' ') FROM visit_work w WHERE w.job_id = j.id) AS work
        """;

    public long Id { get; init; }
    public long Ticket { get; init; }
    public int Version { get; init; }
    public long RacketId { get; init; }
    public JobState State { get; init; }
    public DateOnly ReceivedOn { get; init; }
    public DateOnly? PromisedFor { get; init; }

    /// <summary>Null while it waits, and where it was cancelled.</summary>
    public DateOnly? DoneOn { get; init; }
    public DateOnly? CollectedOn { get; init; }
    public string Note { get; init; } = "";
    public long? PriceMinor { get; init; }
    public DateOnly? PaidOn { get; init; }

    /// <summary>Stops; null for the shop's own bench.</summary>
    public long? LeftAtId { get; init; }
    public long? CollectAtId { get; init; }

    /// <summary>Names, with blanks.</summary>
    public string Work { get; init; } = "";

    public IReadOnlyList<VisitWork> Works => VisitWorks.Of(Work);

    /// <summary>It was done while the client waited: it has one day.</summary>
    public bool IsOfOneDay => DoneOn == ReceivedOn && CollectedOn == DoneOn;
}
