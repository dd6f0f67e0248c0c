using Microsoft.Data.Sqlite;
using TagPage.Web.Hosting;

namespace TagPage.Web.Pages.My;

/// <summary>Answers, a moment later, those who asked for a link.</summary>
public sealed class CornerAsks(CornerAskStore store, TimeProvider clock, ILogger<CornerAsks> log) : PeriodicWork(TimeSpan.FromSeconds(5), clock)
{
    protected override void Work()
    {
        try
        {
            store.AnswerAll();
        }
        catch (Exception e) when (e is SqliteException or IOException)
        {
            log.LogError(e, "Those who asked for a link could not be answered; it is tried again.");
        }
    }
}
