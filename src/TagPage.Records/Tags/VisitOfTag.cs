using TagPage.Core.Jobs;

namespace TagPage.Records.Tags;

/// <summary>A visit as everybody sees it: when, and what kind of work. Neither notes nor money.</summary>
public sealed record VisitOfTag
{
    /// <summary>SQL: columns of jobs <c>j</c> that are visits.</summary>
    internal const string Columns = "j.done_on, (SELECT group_concat(w.work, ' ') FROM visit_work w WHERE w.job_id = j.id) AS work";

    public DateOnly DoneOn { get; init; }

    /// <summary>Names, with blanks.</summary>
    public string Work { get; init; } = "";

    public IReadOnlyList<VisitWork> Works => VisitWorks.Of(Work);
}
