using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>Answers requests for links a moment later.</summary>
public sealed class LinkRequestWorker(LinkRequestStore store, TimeProvider clock, ILogger<LinkRequestWorker> log) : PeriodicWork(TimeSpan.FromSeconds(5), clock, log,
        "Those who asked for a link could not be answered; it is tried again.")
{
    protected override void Work() => store.AnswerAll();
}
