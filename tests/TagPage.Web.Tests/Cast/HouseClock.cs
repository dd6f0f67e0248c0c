using Microsoft.Extensions.Time.Testing;

namespace TagPage.Web.Tests.Cast;

/// <summary>
/// Shows the time of the shop that lives here. As a stopwatch it jumps a year with each that moves in: whatever the
/// program counts in memory within a span of time, it has forgotten by then.
/// </summary>
public sealed class HouseClock : TimeProvider
{
    private FakeTimeProvider _shop = new();
    private long _years;

    public void Follow(FakeTimeProvider clock) => (_shop, _years) = (clock, _years + TimeSpan.FromDays(365).Ticks);

    public override long TimestampFrequency => _shop.TimestampFrequency;

    public override TimeZoneInfo LocalTimeZone => _shop.LocalTimeZone;

    public override DateTimeOffset GetUtcNow() => _shop.GetUtcNow();

    public override long GetTimestamp() => _years + _shop.GetTimestamp();

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        _shop.CreateTimer(callback, state, dueTime, period);
}
