using System.Net;
using System.Security.Cryptography;
using TagPage.Core.Tags;
using TagPage.Web.Limits;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class WrongCodeLimitTests : IDisposable
{
    private const string Guesser = "198.51.100.9";

    private readonly TestShop _shop = new();
    private readonly TagCode _code;

    public WrongCodeLimitTests()
    {
        _shop.Records.Shop();
        _code = _shop.Records.Family().Tag;
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Source_with_twenty_wrong_codes_is_refused_for_every_code_until_an_hour_has_passed()
    {
        await _shop.Stranger().Get("/t/" + _code);
        await Guess(19);
        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser));
        await Guess(1);

        var refused = await _shop.Stranger(Guesser).Open("/t/" + _code);
        Assert.Equal(HttpStatusCode.TooManyRequests, refused.Status);
        Assert.Equal(TimeSpan.FromHours(1), refused.Response.Headers.RetryAfter!.Delta);
        Assert.Contains("+44 20 7946 0182", refused.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("tape", refused.Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser, "/restring.ics"));
        Assert.Equal(HttpStatusCode.OK, await Scan("198.51.100.10"));

        _shop.Clock.Advance(TimeSpan.FromHours(1));
        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser));
    }

    [Fact]
    public async Task Whole_ipv6_network_is_one_source()
    {
        await Guess(20, "2001:db8:1:2::1");

        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan("2001:db8:1:2:ffff::9"));
        Assert.Equal(HttpStatusCode.OK, await Scan("2001:db8:1:3::1"));
    }

    [Fact]
    public async Task Mistyped_and_retired_codes_are_free()
    {
        var retired = _shop.Records.RetiredTag();
        foreach (var _ in Enumerable.Range(0, 25))
        {
            await _shop.Stranger(Guesser).Get("/t/7K2M9Q4TXAW");
            await _shop.Stranger(Guesser).Get("/t/hello");
            await _shop.Stranger(Guesser).Get("/t/" + retired);
        }

        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser));
    }

    [Fact]
    public async Task Tags_not_in_use_yet_count_like_unknown_ones()
    {
        var blank = _shop.Records.BlankTag();
        foreach (var _ in Enumerable.Range(0, 20))
            await _shop.Stranger(Guesser).Get("/t/" + blank);

        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser));
    }

    [Fact]
    public async Task Calendar_files_of_unknown_codes_count_too()
    {
        foreach (var _ in Enumerable.Range(0, 20))
            await _shop.Stranger(Guesser).Get($"/t/{TagCode.Draw(RandomNumberGenerator.Fill)}/restring.ics");

        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser));
    }

    [Fact]
    public async Task Owner_is_never_refused_and_never_counted()
    {
        var owner = _shop.Owner();
        foreach (var _ in Enumerable.Range(0, 25))
            await owner.Get("/t/" + TagCode.Draw(RandomNumberGenerator.Fill));
        Assert.Equal(HttpStatusCode.OK, await Scan(TestSource.Usual));

        await Guess(20, TestSource.Usual);
        Assert.Equal(HttpStatusCode.OK, (await owner.Get("/t/" + _code)).StatusCode);
    }

    [Fact]
    public void Flood_from_everywhere_shuts_out_only_those_with_a_wrong_code_of_their_own()
    {
        var wrong = new WrongCodes(_shop.Clock);
        wrong.Count("early");
        _shop.Clock.Advance(TimeSpan.FromMinutes(30));
        for (var n = 0; n < WrongCodes.MostInAll - 1; n++)
            wrong.Count("flood " + n);
        Assert.Equal(TimeSpan.Zero, wrong.Wait("flood 1"));

        wrong.Count("last");

        Assert.Equal(TimeSpan.FromMinutes(1), wrong.Wait("flood 1"));
        Assert.Equal(TimeSpan.FromMinutes(1), wrong.Wait("early"));
        Assert.Equal(TimeSpan.Zero, wrong.Wait("a player"));
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(TimeSpan.Zero, wrong.Wait("flood 1"));
    }

    private async Task Guess(int times, string source = Guesser)
    {
        foreach (var _ in Enumerable.Range(0, times))
        {
            var answer = await _shop.Stranger(source).Get("/t/" + TagCode.Draw(RandomNumberGenerator.Fill));
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }

    private async Task<HttpStatusCode> Scan(string source, string rest = "") =>
        (await _shop.Stranger(source).Get("/t/" + _code + rest)).StatusCode;
}
