using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// Work that is done when the program starts and then again and again, as long as it runs. If the database or the disk
/// prevents it, that is logged and tried again the next time; anything else ends the program.
/// </summary>
/// <param name="every">How long it waits in between.</param>
/// <param name="clock">The program's clock.</param>
/// <param name="log">Of the worker.</param>
/// <param name="failure">The sentence for the log when it failed.</param>
/// <param name="atStart">False where the start itself has just done it.</param>
public abstract class PeriodicWork(TimeSpan every, TimeProvider clock, ILogger log, string failure, bool atStart = true) : BackgroundService
{
    protected TimeProvider Clock { get; } = clock;

    protected sealed override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(every, Clock);
        try
        {
            if (atStart)
                Try();
            while (await timer.WaitForNextTickAsync(stoppingToken))
                Try();
        }
        catch (OperationCanceledException)
        {
            // The program is ending, perhaps before it ever started.
        }
    }

    private void Try()
    {
        try
        {
            Work();
        }
        catch (Exception e) when (e is SqliteException or IOException or UnauthorizedAccessException)
        {
            log.LogError(e, "{Failure}", failure);
        }
    }

    /// <summary>Does it once.</summary>
    protected abstract void Work();
}
