using System.Globalization;

namespace TagPage.Records.Storage;

/// <summary>How many backups are kept: the last one of each of so many days, weeks and months that have any.</summary>
public sealed record BackupPlan(int Days, int Weeks, int Months)
{
    /// <summary>
    /// Of those made because something was about to happen: so many for each reason, and no longer than that. Before going back to a backup
    /// all stay as long: whoever looks for the right one goes back several times, and the day's records are in the first.
    /// </summary>
    public const int OfOneReason = 3, DaysOfOneReason = 30;

    public static BackupPlan Usual { get; } = new(7, 4, 12);

    /// <summary>Keeps the last of each day, for whoever does not know the shop's plan.</summary>
    public static BackupPlan EveryDay { get; } = new(int.MaxValue, 0, 0);

    /// <summary>
    /// Those that need not be kept. Backups dated ahead come from a clock that was wrong: they stay until their time has come,
    /// and take no other's place.
    /// </summary>
    public IReadOnlyList<BackupFile> Surplus(IEnumerable<BackupFile> all, DateTimeOffset now)
    {
        var past = all.Where(b => b.MadeAt <= now).OrderByDescending(b => b.MadeAt).ToList();
        var regular = past.Where(b => b.IsRegular).ToList();
        HashSet<BackupFile> kept =
        [
            .. LastOfEach(regular, b => b.MadeAt.UtcDateTime.Date).Take(Math.Max(1, Days)),
            .. LastOfEach(regular, b => (ISOWeek.GetYear(b.MadeAt.UtcDateTime), ISOWeek.GetWeekOfYear(b.MadeAt.UtcDateTime))).Take(Weeks),
            .. LastOfEach(regular, b => (b.MadeAt.UtcDateTime.Year, b.MadeAt.UtcDateTime.Month)).Take(Months),
            .. past.Where(b => !b.IsRegular && b.MadeAt >= now.AddDays(-DaysOfOneReason)).GroupBy(b => b.Why).SelectMany(g => g.Key == BackupFile.BeforeRestore ? g : g.Take(OfOneReason)),
        ];
        return [.. past.Where(b => !kept.Contains(b))];
    }

    private static IEnumerable<BackupFile> LastOfEach<T>(IEnumerable<BackupFile> newestFirst, Func<BackupFile, T> span) =>
        newestFirst.GroupBy(span).Select(g => g.First());
}
