using Microsoft.Data.Sqlite;

namespace TagPage.Web.Pages.Found;

/// <summary>Once a day takes out what finders left behind more than 30 days ago.</summary>
public sealed class FoundSweeper(FoundWipeStore store, TimeProvider clock, ILogger<FoundSweeper> log) : BackgroundService
{
    public static readonly TimeSpan Kept = TimeSpan.FromDays(30);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(TimeSpan.FromDays(1), clock);
        try
        {
            do
                TrySweep();
            while (await timer.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException)
        {
            // The program ends.
        }
    }

    /// <summary>Wipes what is due by now.</summary>
    public void Sweep() => store.Wipe(clock.GetUtcNow() - Kept, clock.GetUtcNow());

    private void TrySweep()
    {
        try
        {
            Sweep();
        }
        catch (Exception e) when (e is SqliteException or IOException or UnauthorizedAccessException)
        {
            log.LogError(e, "What finders left more than 30 days ago could not be wiped; it is tried again tomorrow.");
        }
    }
}
