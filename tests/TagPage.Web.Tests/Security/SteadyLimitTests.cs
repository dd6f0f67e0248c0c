using Microsoft.Extensions.Time.Testing;
using TagPage.Core.Tags;
using TagPage.Web.Http.Limits;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class SteadyLimitTests
{
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 11, 25, 10, 0, 0, TimeSpan.Zero));

    [Fact]
    public void Key_has_so_many_at_once_and_gets_them_back_one_by_one()
    {
        var limit = new SteadyLimit(_clock, 3, TimeSpan.FromMinutes(15));
        limit.Take("a");
        limit.Take("a");
        Assert.Equal(TimeSpan.Zero, limit.Wait("a"));
        limit.Take("a");

        Assert.Equal(TimeSpan.FromMinutes(5), limit.Wait("a"));
        Assert.Equal(TimeSpan.Zero, limit.Wait("b"));
        _clock.Advance(TimeSpan.FromMinutes(4));
        Assert.Equal(TimeSpan.FromMinutes(1), limit.Wait("a"));
        _clock.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(TimeSpan.Zero, limit.Wait("a"));
        limit.Take("a");
        Assert.Equal(TimeSpan.FromMinutes(5), limit.Wait("a"));
    }

    [Fact]
    public void Takes_when_there_are_none_do_not_make_the_wait_longer()
    {
        var limit = new SteadyLimit(_clock, 3, TimeSpan.FromMinutes(15));
        for (var n = 0; n < 100; n++)
            limit.Take("a");

        Assert.Equal(TimeSpan.FromMinutes(5), limit.Wait("a"));
    }

    [Fact]
    public void Key_has_taken_within_the_window_and_no_longer()
    {
        var limit = new SteadyLimit(_clock, 3, TimeSpan.FromMinutes(15));
        limit.Take("a");
        _clock.Advance(TimeSpan.FromMinutes(15) - TimeSpan.FromMilliseconds(1));
        Assert.True(limit.HasTaken("a"));
        Assert.False(limit.HasTaken("b"));

        _clock.Advance(TimeSpan.FromMilliseconds(1));

        Assert.False(limit.HasTaken("a"));
    }

    [Fact]
    public void Flood_of_made_up_keys_neither_fills_the_memory_nor_frees_a_spent_key()
    {
        var limit = new SteadyLimit(_clock, 3, TimeSpan.FromHours(1), capacity: 100);
        for (var n = 0; n < 3; n++)
            limit.Take("busy");

        for (var n = 0; n < 10_000; n++)
            limit.Take("made up " + n);

        Assert.True(limit.Wait("busy") > TimeSpan.Zero);
        Assert.InRange(Enumerable.Range(0, 10_000).Count(n => limit.HasTaken("made up " + n)), 50, 99);
    }

    /// <summary>The machine's clock may be set by years in either direction; the time since the start is not affected.</summary>
    [Theory]
    [InlineData(-5)]
    [InlineData(5)]
    public void Clock_that_is_set_frees_nobody_and_locks_nobody_out(int years)
    {
        var clock = new SetClock();
        var (steady, sliding) = (new SteadyLimit(clock, 3, TimeSpan.FromMinutes(15)), new SlidingLimit(clock, 3, TimeSpan.FromMinutes(15)));
        for (var n = 0; n < 3; n++)
        {
            steady.Take("a");
            sliding.TryTake("a");
        }

        clock.Now = clock.Now.AddYears(years);

        Assert.Equal((TimeSpan.FromMinutes(5), TimeSpan.FromMinutes(15)), (steady.Wait("a"), sliding.RetryAfter("a")));
        clock.Ran = TimeSpan.FromMinutes(15);
        Assert.Equal((TimeSpan.Zero, TimeSpan.Zero), (steady.Wait("a"), sliding.RetryAfter("a")));
    }

    [Fact]
    public void Opened_pages_are_remembered_by_source_and_the_oldest_forgotten()
    {
        var opened = new OpenedPages();
        var codes = Enumerable.Range(0, 1 + 2 * OpenedPages.Most).Select(Code).ToList();
        opened.Add("a", codes[0]);
        Assert.True(opened.Has("a", codes[0]));
        Assert.False(opened.Has("b", codes[0]));
        Assert.False(opened.Has("a", codes[1]));

        foreach (var code in codes)
            opened.Add("a", code);

        Assert.False(opened.Has("a", codes[0]));
        Assert.True(opened.Has("a", codes[^1]));
        Assert.InRange(codes.Count(c => opened.Has("a", c)), OpenedPages.Most, 2 * OpenedPages.Most);
    }

    private static TagCode Code(int number)
    {
        var random = new Random(number);
        return TagCode.Draw(random.NextBytes);
    }
}
