using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>Looks every quarter of an hour whether a backup is due or something failed.</summary>
public sealed class BackupWorker(BackupStore backups, TimeProvider clock, ILogger<BackupWorker> log)
    : PeriodicWork(TimeSpan.FromMinutes(15), clock, log, "Backups could not be looked after; it is tried again in a quarter of an hour.")
{
    protected override void Work() => backups.Tend();
}
