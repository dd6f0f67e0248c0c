using Microsoft.Data.Sqlite;

namespace TagPage.Records.Labels;

/// <summary>Fills rolls of blank tags in the background, a few tags a transaction, so that the bench never waits for it.</summary>
public sealed class RollMaker(RollStore store, TimeProvider clock, ILogger<RollMaker> log) : BackgroundService
{
    private const int AtOnce = 20;

    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1);

    /// <summary>Fills what is ordered.</summary>
    public void MakeAll(CancellationToken cancel)
    {
        while (!cancel.IsCancellationRequested && store.MakeSome(AtOnce))
        {
            // Each turn is a transaction of its own.
        }
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Task.Yield();
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                MakeAll(stoppingToken);
            }
            catch (SqliteException e)
            {
                log.LogError(e, "A roll of tags could not be made further; it goes on in a moment.");
            }
            await Task.Delay(Look, clock, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }
}
