namespace TagPage.Records.Shop;

/// <summary>Now and today as the clock on the shop's wall shows them.</summary>
public sealed class ShopClock(TimeProvider clock, ShopStore shops)
{
    /// <summary>No shop's records reach further back; an earlier day is a typo in the year.</summary>
    public static readonly DateOnly Earliest = new(1970, 1, 1);

    public DateTimeOffset Now => clock.GetUtcNow();

    public DateOnly Today => DayOf(Now);

    /// <summary>Day and time on that clock, in whole minutes.</summary>
    public DateTime Minute
    {
        get
        {
            var now = OnTheWall(Now).DateTime;
            return now.AddTicks(-(now.Ticks % TimeSpan.TicksPerMinute));
        }
    }

    /// <summary>The day of an instant on that clock.</summary>
    public DateOnly DayOf(DateTimeOffset instant) => DateOnly.FromDateTime(OnTheWall(instant).DateTime);

    /// <summary>The first instant of tomorrow.</summary>
    public DateTimeOffset Midnight => Zone.Next(Today.AddDays(1).ToDateTime(TimeOnly.MinValue), Now)!.Value;

    /// <summary>An instant as that clock shows it.</summary>
    public DateTimeOffset OnTheWall(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, Zone);

    private TimeZoneInfo Zone => TimeZoneInfo.FindSystemTimeZoneById(shops.Get().TimeZone);
}
