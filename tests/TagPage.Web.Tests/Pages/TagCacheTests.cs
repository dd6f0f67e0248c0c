using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using TagPage.Core.Tags;
using TagPage.Records.DueDates;
using TagPage.Records.LostAndFound;
using TagPage.Records.Reminders;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class TagCacheTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _code;
    private readonly long _player, _racket;

    public TagCacheTests()
    {
        _shop.Records.Shop(timeZone: "Europe/Zurich");
        (_, _player, _racket, _code, _) = _shop.Records.Family();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Kept_page_lives_for_an_hour_and_not_longer()
    {
        await Page();
        ChangeBehindItsBack();

        _shop.Clock.Advance(TimeSpan.FromMinutes(60) - TimeSpan.FromSeconds(1));
        Assert.Contains("red tape", await Page(), StringComparison.Ordinal);
        _shop.Clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Contains("blue tape", await Page(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Kept_page_ends_at_the_shops_midnight()
    {
        // 23:59:50 in Zurich.
        _shop.Clock.SetUtcNow(new DateTimeOffset(2026, 11, 25, 22, 59, 50, TimeSpan.Zero));
        Assert.Contains(": 14 days", await Page(), StringComparison.Ordinal);

        _shop.Clock.Advance(TimeSpan.FromSeconds(9));
        Assert.Contains(": 14 days", await Page(), StringComparison.Ordinal);
        _shop.Clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Contains(": 13 days", await Page(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("UPDATE job SET mains_tension = 48", "48 lb")]
    [InlineData("UPDATE racket SET tape_colour = 'green'", "green tape")]
    [InlineData("UPDATE shop SET opening_hours = 'Always'", "Always")]
    [InlineData("UPDATE player SET times_a_week = 7, hours_a_time = 3", "Restring now")]
    [InlineData("UPDATE string_kind SET name = 'Kelp'", "Kelp")]
    public async Task Kept_page_ends_with_any_change_of_what_it_shows(string change, string shows)
    {
        Assert.DoesNotContain(shows, await Page(), StringComparison.Ordinal);

        _shop.Records.Change(change);

        Assert.Contains(shows, await Page(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Kept_page_outlives_what_is_written_about_others()
    {
        await Page();
        ChangeBehindItsBack();

        var other = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Teo Brandt"), "Teo Brandt"));
        _shop.Records.Job(other, strungOn: TestShop.Today);
        _shop.Records.Change("UPDATE racket SET tape_colour = 'green' WHERE id = @other", new { other });
        Assert.Contains("red tape", await Page(), StringComparison.Ordinal);

        _shop.Records.Change("UPDATE racket SET note = 'Squeaks.' WHERE id = @_racket", new { _racket });
        Assert.Contains("blue tape", await Page(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Kept_page_outlives_the_work_in_the_background_that_finds_nothing_to_do()
    {
        _shop.Get<DueDateWorker>().Run();
        await Page();
        ChangeBehindItsBack();

        _shop.Get<DueDateWorker>().Run();
        await _shop.Get<MailSender>().SendAll(Token);
        _shop.Get<FoundSweeper>().Sweep();
        _shop.Get<BatchWorker>().Round();

        Assert.Contains("red tape", await Page(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_of_the_same_player_ends_the_page_since_they_share_the_hours()
    {
        await Page();
        ChangeBehindItsBack();

        _shop.Records.Change("UPDATE racket SET state = 'Resting' WHERE id = @id", new { id = _shop.Records.Racket(_player, 9) });

        Assert.Contains("blue tape", await Page(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Retired_tag_is_gone_at_once()
    {
        await Page();

        _shop.Records.Change("UPDATE tag SET state = 'Retired', retired_at = '2026-11-25T10:00:00.000Z'");

        Assert.Equal(HttpStatusCode.Gone, (await _shop.Stranger().Get("/t/" + _code)).StatusCode);
    }

    [Fact]
    public async Task Owner_gets_a_fresh_page_and_it_is_kept_for_nobody()
    {
        await Page();
        ChangeBehindItsBack();

        var owner = await _shop.Owner().Open("/t/" + _code);

        Assert.Contains("blue tape", owner.Main, StringComparison.Ordinal);
        Assert.True(owner.Response.Headers.CacheControl!.NoStore);
        Assert.Null(owner.Response.Headers.ETag);
        Assert.Contains("red tape", await Page(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Query_and_spelling_make_no_second_copy()
    {
        await Page();
        ChangeBehindItsBack();

        var other = await _shop.Stranger().Open($"/T/{_code.Display.ToLowerInvariant()}?utm=x");

        Assert.Contains("red tape", other.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gzip, br")]
    [InlineData("")]
    public async Task Browser_that_has_the_page_is_told_so_in_few_bytes(string encoding)
    {
        var first = await Ask(HttpMethod.Get, encoding);
        var again = await Ask(HttpMethod.Get, encoding, first.Headers.ETag!.Tag);
        var stranger = await Ask(HttpMethod.Get, encoding, "\"something-else\"");

        Assert.False(first.Headers.ETag.IsWeak);
        Assert.True(first.Headers.CacheControl!.NoCache);
        Assert.Equal(["Accept-Encoding", "Accept-Language"], first.Headers.Vary);
        Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
        Assert.Equal(first.Headers.ETag, again.Headers.ETag);
        Assert.Empty(await again.Content.ReadAsByteArrayAsync(Token));
        Assert.Equal(HttpStatusCode.OK, stranger.StatusCode);
    }

    [Theory]
    [InlineData("gzip, br")]
    [InlineData("")]
    public async Task Head_says_what_get_would_send(string encoding)
    {
        var get = await Ask(HttpMethod.Get, encoding);
        var head = await Ask(HttpMethod.Head, encoding);

        Assert.Equal(HttpStatusCode.OK, head.StatusCode);
        Assert.Equal(get.Headers.ETag, head.Headers.ETag);
        Assert.Equal(get.Content.Headers.ContentLength, head.Content.Headers.ContentLength);
        Assert.Equal(get.Content.Headers.ContentEncoding, head.Content.Headers.ContentEncoding);
        Assert.Empty(await head.Content.ReadAsByteArrayAsync(Token));
    }

    [Fact]
    public async Task Encoding_follows_what_the_browser_takes()
    {
        Assert.Equal(["gzip"], (await Ask(HttpMethod.Get, "GZip, deflate, br")).Content.Headers.ContentEncoding);
        Assert.Empty((await Ask(HttpMethod.Get, "br, gzip;q=0")).Content.Headers.ContentEncoding);

        var plain = await (await Ask(HttpMethod.Get, "")).Content.ReadAsStringAsync(Token);
        Assert.Equal(plain, await Unpacked());
    }

    [Fact]
    public async Task Page_of_a_racket_with_thirty_jobs_fits_into_8_KB_with_its_style()
    {
        var soft = _shop.Records.Kind("Gannet Soft Multifilament", "Multifilament", 1.30m);
        foreach (var n in Enumerable.Range(1, 29))
            _shop.Records.Reading(_shop.Records.Job(_racket, new DateOnly(2026, 10, 1).AddDays(-37 * n)), 50 + n * 0.7m);
        _shop.Records.Change("UPDATE job SET crosses_id = @soft, crosses_tension = 40 + id * 0.5 WHERE id % 2 = 0", new { soft });
        _shop.Records.Change("UPDATE shop SET accent = '#7A1F4D'");

        var sent = await (await Ask(HttpMethod.Get, "gzip")).Content.ReadAsByteArrayAsync(Token);

        Assert.InRange(sent.Length, 1000, 8 * 1024);
    }

    [Fact]
    public async Task One_request_is_all_there_is()
    {
        var page = await _shop.Stranger().Open("/t/" + _code);

        Assert.Empty(page.Document.QuerySelectorAll("script, img, iframe, link[rel=stylesheet], [style], [onclick]"));
        Assert.Equal("data:,", page.Document.QuerySelector("link[rel=icon]")!.GetAttribute("href"));
        Assert.DoesNotContain("url(", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", page.Text, StringComparison.Ordinal);
        Assert.False(page.Response.Headers.Contains("Set-Cookie"));
    }

    private async Task<string> Page() => (await _shop.Stranger().Open("/t/" + _code)).Main;

    private void ChangeBehindItsBack() => _shop.ChangeFromOutside("UPDATE racket SET tape_colour = 'blue'");

    private async Task<HttpResponseMessage> Ask(HttpMethod method, string encoding, string? known = null)
    {
        using var request = new HttpRequestMessage(method, new Uri("/t/" + _code, UriKind.Relative));
        if (encoding.Length > 0)
            request.Headers.TryAddWithoutValidation("Accept-Encoding", encoding);
        if (known is not null)
            request.Headers.IfNoneMatch.Add(new EntityTagHeaderValue(known));
        return await _shop.Stranger().Client.SendAsync(request, Token);
    }

    private async Task<string> Unpacked()
    {
        await using var packed = await (await Ask(HttpMethod.Get, "gzip")).Content.ReadAsStreamAsync(Token);
        await using var plain = new GZipStream(packed, CompressionMode.Decompress);
        using var reader = new StreamReader(plain, Encoding.UTF8);
        return await reader.ReadToEndAsync(Token);
    }

    private static CancellationToken Token => TestContext.Current.CancellationToken;
}
