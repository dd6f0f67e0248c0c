using TagPage.Records.Storage;

namespace TagPage.Records.Import;

/// <summary>Deletes forgotten uploads even if nobody opens the page again.</summary>
public sealed class UploadSweeper(Uploads uploads, TimeProvider clock, ILogger<UploadSweeper> log) : PeriodicWork(TimeSpan.FromMinutes(10), clock, log,
        "An upload that is over an hour old could not be deleted.")
{
    protected override void Work() => uploads.Sweep();
}
