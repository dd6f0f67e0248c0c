using System.Globalization;

namespace TagPage.Records.Storage;

/// <summary>Once a day deletes dated copies of the database that are older than 30 days: they hold what was deleted since.</summary>
public sealed class CopySweeper(DataFolder folder, TimeProvider clock, ILogger<CopySweeper> log)
    : PeriodicWork(TimeSpan.FromDays(1), clock, log, "A copy that is over 30 days old could not be deleted; it is tried again tomorrow.")
{
    public static readonly TimeSpan Kept = TimeSpan.FromDays(30);

    private const string Stamp = "yyyyMMdd-HHmmss";

    /// <summary>Where a copy made now is kept.</summary>
    public static string NameFor(DateTimeOffset now, string why) => $"{now.UtcDateTime.ToString(Stamp, CultureInfo.InvariantCulture)}-{why}.db";

    /// <summary>Deletes what is due by now. Files without a date in their name are the owner's own.</summary>
    public void Sweep()
    {
        foreach (var copy in Directory.GetFiles(folder.Copies).Where(f => MadeAt(Path.GetFileName(f)) < Clock.GetUtcNow() - Kept))
            File.Delete(copy);
    }

    protected override void Work() => Sweep();

    private static DateTimeOffset? MadeAt(string name) =>
        name.Length > Stamp.Length && DateTimeOffset.TryParseExact(name[..Stamp.Length], Stamp, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at)
            ? at
            : null;
}
