using TagPage.Core.Jobs;

namespace TagPage.Records.Visits;

/// <summary>Work on a racket without new strings.</summary>
public sealed record VisitRow
{
    /// <summary>SQL: columns of jobs <c>j</c> that are visits.</summary>
    internal const string Columns = """
        j.id, j.ticket, j.version, j.racket_id, j.done_on, j.note, j.price_minor, j.paid_on,
        (SELECT group_concat(w.work, ' ') FROM visit_work w WHERE w.job_id = j.id) AS work
        """;

    public long Id { get; init; }
    public long Ticket { get; init; }
    public int Version { get; init; }
    public long RacketId { get; init; }
    public DateOnly DoneOn { get; init; }
    public string Note { get; init; } = "";
    public long? PriceMinor { get; init; }
    public DateOnly? PaidOn { get; init; }

    /// <summary>Names, with blanks.</summary>
    public string Work { get; init; } = "";

    public IReadOnlyList<VisitWork> Works => [.. Work.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Enum.Parse<VisitWork>).Order()];
}
