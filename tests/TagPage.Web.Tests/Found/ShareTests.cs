using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Found;

/// <summary>Mallory holds a tag's code and one connection; everybody else's finder must still get through.</summary>
public sealed class ShareTests : IDisposable
{
    private const string Shown = "+44 20 7946 0958";

    private readonly TestShop _shop = new();
    private readonly TagCode _code;

    public ShareTests()
    {
        _shop.Records.Shop();
        _code = _shop.Records.Family().Tag;
        _shop.Records.Agree("Contact");
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task One_source_has_at_most_half_of_the_hours_showings_of_a_tag()
    {
        Assert.True(await IsShown("198.51.100.66"));
        _shop.Clock.Advance(TimeSpan.FromMinutes(11));
        Assert.False(await IsShown("198.51.100.66"));
        Assert.Equal(1, _shop.Records.Events());

        Assert.True(await IsShown("198.51.100.1"));
        Assert.True(await IsShown("198.51.100.2"));
        Assert.False(await IsShown("198.51.100.3"));
    }

    [Fact]
    public async Task One_source_has_at_most_half_of_the_days_showings_of_a_tag()
    {
        for (var hour = 0; hour < 12; hour++)
        {
            Assert.Equal(hour < 10, await IsShown("198.51.100.66"));
            _shop.Clock.Advance(TimeSpan.FromMinutes(61));
        }
        Assert.Equal(10, _shop.Records.Events());

        for (var n = 0; n < 10; n++)
        {
            Assert.True(await IsShown($"198.51.100.{n}"));
            _shop.Clock.Advance(TimeSpan.FromMinutes(30));
        }
    }

    [Fact]
    public async Task One_source_has_at_most_half_of_the_days_words_for_a_tag()
    {
        for (var n = 0; n < 8; n++)
        {
            await _shop.Stranger("198.51.100.66").Writes(_code, "Word " + n);
            _shop.Clock.Advance(TimeSpan.FromMinutes(30));
        }
        Assert.Equal(5, _shop.Records.Events());

        await _shop.Stranger("198.51.100.1").Writes(_code, "It is at the desk.");
        Assert.Equal(6, _shop.Records.Events());
    }

    /// <summary>A machine whose clock was years ahead has left rows that no day ever catches up with.</summary>
    [Fact]
    public async Task Clock_that_was_set_back_does_not_keep_a_tag_shut()
    {
        for (var n = 0; n < 3; n++)
            await IsShown($"198.51.100.{n}");
        for (var n = 0; n < 10; n++)
            await _shop.Stranger($"198.51.100.{n}").Says(_code);
        _shop.Records.Change("UPDATE found_event SET at = replace(at, '2026-', '2031-')");
        _shop.Records.Change("UPDATE outbox SET not_before = replace(not_before, '2026-', '2031-')");
        Assert.Equal(13, _shop.Records.Events());

        Assert.True(await IsShown("198.51.100.0"));
        await _shop.Stranger("198.51.100.0").Says(_code);

        Assert.Equal(15, _shop.Records.Events());
        Assert.Equal(2, _shop.Records.Count("outbox", "not_before < '2026-11-26'"));
    }

    private async Task<bool> IsShown(string source) =>
        (await _shop.Stranger(source).AskForContact(_code)).Main.Contains(Shown, StringComparison.Ordinal);
}
