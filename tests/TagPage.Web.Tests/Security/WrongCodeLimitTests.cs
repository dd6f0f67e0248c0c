using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using TagPage.Core.Tags;
using TagPage.Web.Http.Limits;
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
    public async Task Source_with_300_wrong_codes_is_refused_until_they_come_back_one_by_one()
    {
        await Guess(299);
        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser, code: _shop.Records.LiveTag(_shop.Records.Racket(1, 2))));
        await Guess(1);

        var refused = await _shop.Stranger(Guesser).Open("/t/" + _code);
        Assert.Equal(HttpStatusCode.TooManyRequests, refused.Status);
        Assert.Equal(TimeSpan.FromSeconds(12), refused.Response.Headers.RetryAfter!.Delta);
        Assert.Contains("+44 20 7946 0182", refused.Main, StringComparison.Ordinal);
        Assert.Contains("another network", refused.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("tape", refused.Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser, "/restring.ics"));
        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser, "/found"));
        Assert.Equal(HttpStatusCode.OK, await Scan("198.51.100.10"));

        _shop.Clock.Advance(TimeSpan.FromSeconds(12));
        await Guess(1);
        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser));
        _shop.Clock.Advance(TimeSpan.FromSeconds(12));
        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser));
    }

    [Fact]
    public async Task Pages_that_a_source_has_opened_before_stay_open_to_neighbours_of_a_guesser()
    {
        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser));
        Assert.Equal(HttpStatusCode.OK, await Scan("198.51.100.10"));
        var fresh = _shop.Records.LiveTag(_shop.Records.Racket(1, 2));

        await Guess(300);

        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser));
        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser, "/found"));
        Assert.Equal(HttpStatusCode.OK, await Scan(Guesser, "/restring.ics"));
        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser, code: fresh));
    }

    [Fact]
    public async Task Refused_codes_are_logged_once_a_minute_without_the_code_or_the_address()
    {
        await Guess(300);
        foreach (var _ in Enumerable.Range(0, 5))
            await Scan(Guesser);
        Assert.Single(Refusals());
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        await Guess(5);
        await Scan(Guesser, "/found");

        Assert.Equal(2, Refusals().Count);
        Assert.All(Refusals(), l => Assert.StartsWith("Warning", l, StringComparison.Ordinal));
        Assert.All(_shop.Log.All, l =>
        {
            Assert.DoesNotContain(_code.ToString(), l, StringComparison.Ordinal);
            Assert.DoesNotContain(Guesser, l, StringComparison.Ordinal);
        });

        List<string> Refusals() => [.. _shop.Log.All.Where(l => l.Contains("wrong tag codes", StringComparison.Ordinal))];
    }

    [Fact]
    public async Task Whole_ipv6_network_is_one_source()
    {
        await Guess(300, "2001:db8:1:2::1");

        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan("2001:db8:1:2:ffff::9"));
        Assert.Equal(HttpStatusCode.OK, await Scan("2001:db8:1:3::1"));
    }

    [Fact]
    public async Task Mistyped_and_retired_codes_are_free()
    {
        var retired = _shop.Records.RetiredTag();
        foreach (var _ in Enumerable.Range(0, 320))
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
        foreach (var _ in Enumerable.Range(0, 300))
            await _shop.Stranger(Guesser).Get("/t/" + blank);

        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser));
    }

    [Fact]
    public async Task Calendar_files_of_unknown_codes_count_too()
    {
        foreach (var _ in Enumerable.Range(0, 300))
            await _shop.Stranger(Guesser).Get($"/t/{TagCode.Draw(RandomNumberGenerator.Fill)}/restring.ics");

        Assert.Equal(HttpStatusCode.TooManyRequests, await Scan(Guesser));
    }

    [Fact]
    public async Task Owner_is_never_refused_and_never_counted()
    {
        var owner = _shop.Owner();
        foreach (var _ in Enumerable.Range(0, 320))
            await owner.Get("/t/" + TagCode.Draw(RandomNumberGenerator.Fill));
        Assert.Equal(HttpStatusCode.OK, await Scan(TestSource.Usual));

        await Guess(300, TestSource.Usual);
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

    /// <summary>The sum behind the figures, as docs/decisions.md has it.</summary>
    [Fact]
    public void Limits_keep_the_hits_that_a_year_of_guessing_can_expect_far_below_one()
    {
        const double liveTags = 10_000, codes = (1L << 50) * 32.0 / 36, hours = 24 * 365;
        var drawn = Enumerable.Range(0, 36_000).Select(n => new Random(n)).Count(r => HasCheckCharacterOfTheAlphabet(r));
        Assert.InRange(drawn, 31_500, 32_500);

        var inAll = WrongCodes.MostInAll * 60 * hours * liveTags / codes;
        var oneSource = (WrongCodes.MostOfASource + WrongCodes.MostOfASource * hours) * liveTags / codes;
        var unheld = 1_000 * 3600 * hours * liveTags / codes;

        var decided = File.ReadAllText(Path.Combine(Repository.Folder, "docs", "decisions.md"));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"are {inAll:0.0000} expected hits; one connection alone has {oneSource:0.00000} a year"), decided, StringComparison.Ordinal);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"are {unheld:0.00} expected hits"), decided, StringComparison.Ordinal);
        Assert.True(inAll < 0.01);
    }

    /// <summary>A code's first draw is repeated where its check character would be a letter that is left out.</summary>
    private static bool HasCheckCharacterOfTheAlphabet(Random random)
    {
        var draws = 0;
        TagCode.Draw(bytes =>
        {
            draws++;
            random.NextBytes(bytes);
        });
        return draws == 1;
    }

    private async Task Guess(int times, string source = Guesser)
    {
        var stranger = _shop.Stranger(source);
        foreach (var _ in Enumerable.Range(0, times))
        {
            var answer = await stranger.Get("/t/" + TagCode.Draw(RandomNumberGenerator.Fill));
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }

    private async Task<HttpStatusCode> Scan(string source, string rest = "", TagCode? code = null) =>
        (await _shop.Stranger(source).Get("/t/" + (code ?? _code) + rest)).StatusCode;
}
