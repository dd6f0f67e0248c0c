namespace TagPage.Web.Hosting;

/// <summary>Work that is done when the program starts and then again and again, as long as it runs.</summary>
/// <param name="every">How long it rests in between.</param>
/// <param name="clock">The program's clock.</param>
public abstract class PeriodicWork(TimeSpan every, TimeProvider clock) : BackgroundService
{
    protected TimeProvider Clock { get; } = clock;

    protected sealed override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(every, Clock);
        try
        {
            do
                Work();
            while (await timer.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException)
        {
            // The program ends, perhaps because it never got to start.
        }
    }

    /// <summary>Does it once. What it throws ends the program, so it catches what may well go wrong.</summary>
    protected abstract void Work();
}
