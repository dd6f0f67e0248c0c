namespace TagPage.Web.Tests.Cast;

/// <summary>A machine’s clock, which somebody sets, beside its stopwatch, which nobody can.</summary>
internal sealed class SetClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 11, 25, 10, 0, 0, TimeSpan.Zero);

    public TimeSpan Ran { get; set; }

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override DateTimeOffset GetUtcNow() => Now;

    public override long GetTimestamp() => Ran.Ticks;
}
