namespace TagPage.Records.Backups;

/// <summary>When the nightly backup is due: at three by the clock on the shop's wall, or as soon as the program runs again after that.</summary>
public static class BackupTime
{
    private const int Hour = 3;

    /// <summary>From then on the bench says so.</summary>
    public static readonly TimeSpan Old = TimeSpan.FromDays(3);

    /// <param name="last">When the last good one was made, on the wall's clock; null for none.</param>
    /// <param name="now">On the wall's clock.</param>
    public static bool IsDue(DateTime? last, DateTime now)
    {
        var night = now.Date.AddHours(Hour);
        return last is not { } at || at < (night > now ? night.AddDays(-1) : night);
    }
}
