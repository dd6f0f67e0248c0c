using Microsoft.Extensions.Time.Testing;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Tests.Security;

public sealed class SlidingLimitTests
{
    private readonly FakeTimeProvider _clock = new();

    [Fact]
    public void Key_has_so_many_takes_and_no_more()
    {
        var limit = new SlidingLimit(_clock, 3, TimeSpan.FromMinutes(15));

        Assert.True(limit.TryTake("a"));
        Assert.True(limit.TryTake("a"));
        Assert.False(limit.IsSpent("a"));
        Assert.True(limit.TryTake("a"));
        Assert.True(limit.IsSpent("a"));
        Assert.False(limit.TryTake("a"));
        Assert.Equal(3, limit.Count("a"));
        Assert.True(limit.TryTake("b"));
    }

    [Fact]
    public void Window_slides_so_that_takes_come_back_one_by_one()
    {
        var limit = new SlidingLimit(_clock, 2, TimeSpan.FromMinutes(15));
        limit.TryTake("a");
        _clock.Advance(TimeSpan.FromMinutes(10));
        limit.TryTake("a");

        Assert.Equal(TimeSpan.FromMinutes(5), limit.RetryAfter("a"));
        _clock.Advance(TimeSpan.FromMinutes(5) - TimeSpan.FromMilliseconds(1));
        Assert.False(limit.TryTake("a"));
        _clock.Advance(TimeSpan.FromMilliseconds(1));
        Assert.Equal(TimeSpan.Zero, limit.RetryAfter("a"));
        Assert.True(limit.TryTake("a"));
        Assert.False(limit.TryTake("a"));
    }

    [Fact]
    public void Refused_takes_do_not_make_the_wait_longer()
    {
        var limit = new SlidingLimit(_clock, 1, TimeSpan.FromMinutes(15));
        limit.TryTake("a");
        _clock.Advance(TimeSpan.FromMinutes(14));
        limit.TryTake("a");

        Assert.Equal(TimeSpan.FromMinutes(1), limit.RetryAfter("a"));
    }

    [Fact]
    public void Forgotten_key_begins_anew()
    {
        var limit = new SlidingLimit(_clock, 1, TimeSpan.FromMinutes(15));
        limit.TryTake("a");

        limit.Forget("a");

        Assert.True(limit.TryTake("a"));
    }

    [Fact]
    public void Flood_of_made_up_keys_neither_fills_the_memory_nor_frees_a_spent_key()
    {
        var limit = new SlidingLimit(_clock, 3, TimeSpan.FromHours(1), capacity: 100);
        while (limit.TryTake("busy"))
            _clock.Advance(TimeSpan.FromSeconds(1));

        for (var n = 0; n < 10_000; n++)
            limit.TryTake("made up " + n);

        Assert.True(limit.IsSpent("busy"));
        Assert.True(Enumerable.Range(0, 10_000).Count(n => limit.Count("made up " + n) > 0) < 100);
    }

    [Fact]
    public async Task Many_hands_at_once_never_take_more_than_there_is()
    {
        var limit = new SlidingLimit(_clock, 50, TimeSpan.FromHours(1));

        var taken = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() =>
            Enumerable.Range(0, 100).Count(_ => limit.TryTake("a")))));

        Assert.Equal(50, taken.Sum());
    }
}
