using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>Guessing is slow for strangers, and never locks Runa out.</summary>
public sealed class SignInLimitTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();

    public async ValueTask InitializeAsync() => await _shop.OwnedByRuna();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Source_has_10_tries_at_an_account_in_15_minutes()
    {
        var mallory = _shop.Stranger();
        Assert.All(await Guess(mallory, 10), s => Assert.Equal(HttpStatusCode.OK, s));

        var refused = await mallory.SignIn(password: Runa.Password);

        Assert.Equal(HttpStatusCode.TooManyRequests, refused.Status);
        Assert.Contains("Too many attempts", refused.Main, StringComparison.Ordinal);
        Assert.Equal(TimeSpan.FromMinutes(15), refused.Response.Headers.RetryAfter?.Delta);
        _shop.Clock.Advance(TimeSpan.FromMinutes(15));
        Assert.Equal("/shop", (await mallory.SignIn()).Location);
    }

    [Fact]
    public async Task Right_password_from_elsewhere_still_works()
    {
        await Guess(_shop.Stranger(), 11);

        Assert.Equal("/shop", (await _shop.Stranger("198.51.100.4").SignIn()).Location);
    }

    [Fact]
    public async Task Source_has_30_tries_in_15_minutes_whatever_the_names()
    {
        var mallory = _shop.Stranger();
        for (var n = 0; n < 30; n++)
            Assert.Equal(HttpStatusCode.OK, (await mallory.SignIn(name: "name " + n, password: "four blue herons")).Status);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await mallory.SignIn(name: "another")).Status);
    }

    [Fact]
    public async Task Neighbours_in_one_ipv6_network_are_one_source()
    {
        await Guess(_shop.Stranger("2001:db8:1:2::1"), 10);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await _shop.Stranger("2001:db8:1:2:ffff::9").SignIn()).Status);
        Assert.Equal("/shop", (await _shop.Stranger("2001:db8:1:3::1").SignIn()).Location);
    }

    [Fact]
    public async Task Made_up_forwarded_address_does_not_begin_a_new_count()
    {
        var mallory = _shop.Stranger();
        for (var n = 0; n < 10; n++)
        {
            mallory.Client.DefaultRequestHeaders.Remove("X-Forwarded-For");
            mallory.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "198.51.100." + n);
            await mallory.SignIn(password: "four blue herons");
        }

        mallory.Client.DefaultRequestHeaders.Remove("X-Forwarded-For");
        mallory.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "198.51.100.200");
        Assert.Equal(HttpStatusCode.TooManyRequests, (await mallory.SignIn()).Status);
    }

    [Fact]
    public async Task Proxy_on_this_machine_tells_sources_apart()
    {
        var (mallory, runa) = (_shop.Stranger("127.0.0.1"), _shop.Stranger("127.0.0.1"));
        mallory.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "203.0.113.50");
        runa.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "198.51.100.4");
        await Guess(mallory, 10);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await mallory.SignIn()).Status);
        Assert.Equal("/shop", (await runa.SignIn()).Location);
    }

    [Fact]
    public async Task Many_sources_have_100_tries_an_hour_and_only_a_known_browser_gets_through()
    {
        var runa = _shop.Stranger("198.51.100.4");
        await runa.SignIn();
        await runa.Send(await runa.Open("/account/sign-out"));
        for (var source = 0; source < 10; source++)
            await Guess(_shop.Stranger("203.0.113." + (100 + source)), 10);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await _shop.Stranger("198.51.100.9").SignIn()).Status);
        Assert.Equal("/shop", (await runa.SignIn()).Location);
        _shop.Clock.Advance(TimeSpan.FromHours(1));
        Assert.Equal("/shop", (await _shop.Stranger("198.51.100.9").SignIn()).Location);
    }

    [Fact]
    public async Task Neighbour_on_the_same_network_cannot_lock_out_a_known_browser()
    {
        var runa = _shop.Stranger();
        await runa.SignIn();
        await runa.Send(await runa.Open("/account/sign-out"));
        await Guess(_shop.Stranger(), 40);

        Assert.Equal("/shop", (await runa.SignIn()).Location);
    }

    [Fact]
    public async Task Stolen_known_browser_has_10_tries_too()
    {
        var stolen = _shop.Stranger();
        await stolen.SignIn();
        await stolen.Send(await stolen.Open("/account/sign-out"));

        await Guess(stolen, 10);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await stolen.SignIn()).Status);
    }

    [Fact]
    public async Task Made_up_device_cookie_is_worth_nothing()
    {
        var mallory = _shop.Stranger();
        mallory.Client.DefaultRequestHeaders.Add("Cookie", "__Host-device=CfDJ8NotSignedByAnybody");
        await Guess(mallory, 10);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await mallory.SignIn()).Status);
    }

    [Fact]
    public async Task Tries_are_logged_in_one_line_each_without_names_addresses_or_passwords()
    {
        var mallory = _shop.Stranger();
        Assert.Single((await mallory.SignIn(name: "Runa\r\nwarn: forged", password: "four blue herons")).Errors);
        await mallory.SignIn(name: "Runa warn: forged", password: "four blue herons");
        await Guess(mallory, 11);
        await _shop.Stranger("198.51.100.4").SignIn();

        var lines = _shop.Log.All.Where(l => l.Contains("Sign", StringComparison.Ordinal)).ToList();
        Assert.Equal(11, lines.Count(l => l.Contains("Sign-in failed", StringComparison.Ordinal)));
        Assert.Single(lines, l => l.Contains("Sign-in refused", StringComparison.Ordinal));
        Assert.Single(lines, l => l.Contains("Signed in", StringComparison.Ordinal));
        Assert.All(_shop.Log.All, l =>
        {
            Assert.DoesNotContain("203.0.113.7", l, StringComparison.Ordinal);
            Assert.DoesNotContain("herons", l, StringComparison.Ordinal);
            Assert.DoesNotContain("forged", l, StringComparison.Ordinal);
        });
        Assert.All(lines, l => Assert.DoesNotContain('\n', l.TrimEnd()));
    }

    private static async Task<List<HttpStatusCode>> Guess(Visitor visitor, int times)
    {
        var form = await visitor.Open("/account/sign-in");
        var answers = new List<HttpStatusCode>();
        for (var n = 0; n < times; n++)
            answers.Add((await visitor.Send(form, ("Input.Name", Runa.Name), ("Input.Password", "blue herons, guess " + n))).Status);
        return answers;
    }
}
