namespace TagPage.Web.Pages.Shop.Import;

/// <summary>Sees to it that forgotten uploads go although nobody opens the page again.</summary>
internal sealed class UploadSweeper(Uploads uploads, TimeProvider clock, ILogger<UploadSweeper> log) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(TimeSpan.FromMinutes(10), clock);
        try
        {
            do
                Sweep();
            while (await timer.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException)
        {
            // The program ends, perhaps because it never got to start.
        }
    }

    private void Sweep()
    {
        try
        {
            uploads.Sweep();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            log.LogWarning(e, "An upload that is over an hour old could not be deleted.");
        }
    }
}
