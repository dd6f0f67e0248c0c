using TagPage.Records.Storage;

namespace TagPage.Records.DueDates;

/// <summary>Works out dates in the background, some players at a time: on every new day and after a change of settings.</summary>
public sealed class DueDateWorker(DueDateKeeper dates, TimeProvider clock, ILogger<DueDateWorker> log) : PeriodicWork(TimeSpan.FromSeconds(5), clock, log,
        "Restring-by dates could not be worked out again; it is tried again in a moment.")
{
    /// <summary>Does all that is left; what is not done when the program ends goes on at its next start.</summary>
    public void Run()
    {
        dates.BeginDay();
        while (dates.RefreshLater())
        {
            // Requests get their turn to write between two batches.
        }
    }

    protected override void Work() => Run();
}
