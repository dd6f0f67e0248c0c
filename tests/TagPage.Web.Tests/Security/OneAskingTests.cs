using Microsoft.AspNetCore.Http;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Http;
using TagPage.Web.Http.Limits;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>The code of an address is read, and the limits are asked, once a request: by the cache, and not by the page again.</summary>
public sealed class OneAskingTests : IDisposable
{
    private const string Source = "198.51.100.7";

    private readonly TestShop _shop = new();
    private readonly CountingClock _clock = new();
    private readonly CodeGuard _guard;
    private readonly string _tag;

    public OneAskingTests()
    {
        _shop.Records.Shop();
        _tag = _shop.Records.Family().Tag.ToString();
        var wrong = new WrongCodes(_clock);
        _guard = new CodeGuard(wrong, _shop.Get<SecurityLog>(), _clock);
        wrong.Count(Source);
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Cache_and_page_ask_the_limits_once_between_them()
    {
        var once = Looks(() => _guard.Ask(Visit(), _tag));
        Assert.True(once > 0);

        var lookup = new TagLookup(_shop.Get<Database>(), _shop.Get<TagPageStore>(), _shop.Get<CareStore>(), _shop.Get<ShopStore>(), _shop.Get<ShopClock>(), _guard);
        var opened = 0;
        var cache = new TagCache(context => { opened += lookup.Open(_tag, context).Racket is null ? 0 : 1; return Task.CompletedTask; },
            _shop.Get<Database>(), _shop.Get<ShopClock>(), _guard, _shop.Get<CookieRules>());
        var before = _clock.Looks;
        await cache.InvokeAsync(Visit());

        Assert.Equal(1, opened);
        Assert.Equal(once, _clock.Looks - before);
    }

    [Fact]
    public void Another_request_and_another_code_are_asked_anew()
    {
        var visit = Visit();
        var once = Looks(() => _guard.Ask(visit, _tag));

        Assert.Equal(0, Looks(() => _guard.Ask(visit, _tag)));
        Assert.Equal(once, Looks(() => _guard.Ask(Visit(), _tag)));
        Assert.Equal(once, Looks(() => _guard.Ask(visit, _shop.Records.BlankTag().ToString())));
    }

    private int Looks(Action act)
    {
        var before = _clock.Looks;
        act();
        return _clock.Looks - before;
    }

    private DefaultHttpContext Visit()
    {
        var context = new DefaultHttpContext();
        context.Request.Method = "GET";
        context.Request.Path = "/t/" + _tag;
        context.Connection.RemoteIpAddress = System.Net.IPAddress.Parse(Source);
        return context;
    }

    /// <summary>Every limit that is asked looks at it.</summary>
    private sealed class CountingClock : TimeProvider
    {
        public int Looks { get; private set; }

        public override long GetTimestamp()
        {
            Looks++;
            return base.GetTimestamp();
        }
    }
}
