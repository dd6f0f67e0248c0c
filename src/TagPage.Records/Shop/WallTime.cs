namespace TagPage.Records.Shop;

/// <summary>Times on the clock of a wall, which goes on and back where the law says so: some it shows twice, some never.</summary>
public static class WallTime
{
    /// <summary>Wider than any time zone is from the others, and shorter than clocks are left alone anywhere.</summary>
    private static readonly TimeSpan Around = TimeSpan.FromHours(26);

    /// <summary>
    /// The first instant after another at which the clock shows a time or, where that is left out, goes past it; null where that was
    /// before. Asks the zone about instants only: about times on the wall .NET does not know every gap.
    /// </summary>
    public static DateTimeOffset? Next(this TimeZoneInfo zone, DateTime wall, DateTimeOffset after)
    {
        var there = new DateTimeOffset(wall, TimeSpan.Zero);
        DateTimeOffset[] candidates = [there - zone.GetUtcOffset(there - Around), there - zone.GetUtcOffset(there + Around)];
        var shown = candidates.Where(at => zone.Shows(at) == wall).ToList();
        if (shown.Count == 0)
            shown.Add(zone.GoesPast(wall, candidates.Min(), candidates.Max()));
        return shown.Where(at => at > after).Order().Select(at => (DateTimeOffset?)at).FirstOrDefault();
    }

    /// <summary>When clocks go on and leave a time out, between an instant before that and one that is not.</summary>
    private static DateTimeOffset GoesPast(this TimeZoneInfo zone, DateTime wall, DateTimeOffset before, DateTimeOffset past)
    {
        while (past - before > TimeSpan.FromTicks(1))
        {
            var between = before + (past - before) / 2;
            (before, past) = zone.Shows(between) < wall ? (between, past) : (before, between);
        }
        return past;
    }

    private static DateTime Shows(this TimeZoneInfo zone, DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, zone).DateTime;
}
