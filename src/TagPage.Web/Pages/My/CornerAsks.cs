using TagPage.Web.Hosting;

namespace TagPage.Web.Pages.My;

/// <summary>Answers, a moment later, those who asked for a link.</summary>
public sealed class CornerAsks(CornerAskStore store, TimeProvider clock, ILogger<CornerAsks> log) : PeriodicWork(TimeSpan.FromSeconds(5), clock, log,
        "Those who asked for a link could not be answered; it is tried again.")
{
    protected override void Work() => store.AnswerAll();
}
