using System.Net;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>
/// Today is 25 November 2026. Pim's racket was strung on 1 November with 18 h · (1.25 / 1.30)² = 16.64 h of polyester, and
/// is played 3 h a week: 38 days, so it is due on 9 December, with 14 of 38 days left.
/// </summary>
public sealed class TagPageTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _code;
    private readonly long _racket, _job;

    public TagPageTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _code, _job) = _shop.Records.Family();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Player_reads_when_to_restring_and_what_decides_it()
    {
        var page = await Scan();

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal("Restring in 14 days", Text(page, "h1"));
        Assert.StartsWith("Restring in 14 days", page.Document.Title, StringComparison.Ordinal);
        Assert.Equal("by 9 Dec 2026", Text(page, ".by"));
        Assert.Equal("Good", Text(page, ".mark"));
        Assert.Contains("About a third left: 14 days, because of the hours played", page.Main, StringComparison.Ordinal);
        Assert.Contains("Racket 1 · red tape · tennis", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lost_rackets_page_begins_with_its_main_heading_which_says_so()
    {
        _shop.Records.Change("UPDATE racket SET lost_since = '2026-11-20'");

        var page = await Scan();

        Assert.Equal(["▲ This racket is marked as lost", "Restring in 14 days"], page.Document.QuerySelectorAll("main :is(h1, h2)").Take(2).Select(h => h.TextContent.Trim()));
        Assert.Equal("H1", page.Document.QuerySelector("main :is(h1, h2, h3)")!.TagName);
        Assert.Single(page.Document.QuerySelectorAll("h1"));
    }

    [Fact]
    public async Task Player_reads_what_is_strung_now()
    {
        _shop.Records.Reading(_job, 62);
        _shop.Records.Change("UPDATE job SET mains_pre_stretch = 10, crosses_pre_stretch = 10, pieces = 1");

        var page = await Scan();

        Assert.Equal("52 lb (23.6 kg)Heron Spin, 1.25\u00A0mm", Text(page, ".facts dd"));
        Assert.Equal("1 Nov 2026, in one piece, pre-stretched 10 %", Facts(page)["Strung"]);
        Assert.Equal("right after stringing: 62 on the shop’s gauge", Facts(page)["Measured"]);
        Assert.Equal("50 lb (22.7 kg)Heron Spin, 1.25\u00A0mm", Facts(page)["Crosses"]);
    }

    [Fact]
    public async Task Pitch_is_read_in_hertz()
    {
        _shop.Records.Reading(_job, 585.5m, "Hertz");

        Assert.Equal("right after stringing: 585.5 Hz", Facts(await Scan())["Measured"]);
    }

    [Fact]
    public async Task History_is_newest_first_and_says_how_much_more_there_is()
    {
        foreach (var n in Enumerable.Range(1, 14))
            _shop.Records.Job(_racket, new DateOnly(2026, 10, 1).AddMonths(-n));

        var rows = (await Scan()).Document.QuerySelectorAll(".history tbody tr");

        Assert.Equal(12, rows.Length);
        Assert.Equal("1 Sep 2026", rows[0].Children[0].TextContent);
        Assert.Equal(["52 / 50 lb", "–", "Heron Spin 1.25"], rows[0].Children.Skip(1).Select(c => c.TextContent));
        Assert.Contains("and 2 earlier", (await Scan()).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hybrid_names_both_strings()
    {
        var soft = _shop.Records.Kind("Gannet Soft", "Multifilament", 1.30m);
        _shop.Records.Change("UPDATE job SET crosses_id = @soft", new { soft });
        _shop.Records.Job(_racket, new(2026, 11, 20));

        var page = await Scan();

        Assert.Equal("Heron Spin 1.25 / Gannet Soft 1.30", page.Document.QuerySelector(".history tbody tr")!.Children[3].TextContent);
    }

    [Fact]
    public async Task Strings_past_their_date_are_said_to_be_so_without_alarm()
    {
        _shop.Records.Change("UPDATE job SET strung_on = '2026-10-09'");

        var page = await Scan();

        Assert.Equal("Restring now", Text(page, "h1"));
        Assert.Equal("it was due 9 days ago, 16 Nov 2026", Text(page, ".by"));
        Assert.Equal("Past its date", Text(page, ".mark"));
        Assert.Contains("If yours hurts, ask a doctor", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("calendar", page.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'", "No strings in it", "the last ones came out on 20 Nov 2026")]
    [InlineData("DELETE FROM job", "Not strung here yet", "this page begins with the first stringing")]
    [InlineData("UPDATE racket SET state = 'Resting'", "Nothing due", "this racket is not being played at the moment")]
    [InlineData("UPDATE racket SET state = 'Sold'", "Nothing due", "this racket is not being played at the moment")]
    [InlineData("UPDATE racket SET own_date = '2026-11-25', own_date_note = 'canary'", "Restring today", "by 25 Nov 2026")]
    [InlineData("UPDATE racket SET own_date = '2026-11-26'", "Restring tomorrow", "by 26 Nov 2026")]
    public async Task Every_state_has_words_of_its_own(string change, string headline, string date)
    {
        _shop.Records.Change(change);

        var page = await Scan();

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal(headline, Text(page, "h1"));
        Assert.Equal(date, Text(page, ".by"));
    }

    [Fact]
    public async Task String_life_is_drawn_with_a_stroke_for_each_main_and_says_what_it_shows()
    {
        var page = await Scan();

        var drawing = page.Document.QuerySelector("svg[role=img]")!;
        Assert.Equal(6, Strokes(drawing.QuerySelector(".good")!));
        Assert.Equal(10, Strokes(drawing.QuerySelector(".used")!));
        Assert.Equal("About a third left: 14 days, because of the hours played", drawing.GetAttribute("aria-label"));
    }

    [Theory]
    [InlineData("lower")]
    [InlineData("shown")]
    [InlineData("spaced")]
    [InlineData("look-alike")]
    public async Task Code_is_read_in_any_spelling_without_a_redirect(string spelling)
    {
        var typed = spelling switch
        {
            "lower" => _code.ToString().ToLowerInvariant(),
            "shown" => _code.Display,
            "spaced" => Uri.EscapeDataString(_code.Display.Replace('-', ' ')),
            _ => _code.ToString().Replace('0', 'o').Replace('1', 'l'),
        };

        Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().Open("/T/" + typed)).Status);
    }

    [Fact]
    public async Task Shop_can_be_called_and_found_and_helps_with_a_lost_racket()
    {
        var page = await Scan();

        Assert.Equal("tel:+44-20-7946-0182", page.Document.QuerySelector(".button.primary")!.GetAttribute("href"));
        Assert.Contains("3 Chandler’s Steps, Eastmere", page.Main, StringComparison.Ordinal);
        Assert.Contains("Saturday 9:00–13:00", page.Main, StringComparison.Ordinal);
        Assert.Contains("Found this racket?", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Search_engines_are_asked_to_leave_it_out() =>
        Assert.Equal("noindex", (await Scan()).Document.QuerySelector("meta[name=robots]")!.GetAttribute("content"));

    [Fact]
    public async Task Owner_scanning_a_racket_is_led_to_its_card_and_a_stranger_is_not()
    {
        var owner = await _shop.Owner().Open("/t/" + _code);

        Assert.Equal($"/shop/rackets/{_racket}", owner.Document.QuerySelector("main a")!.GetAttribute("href"));
        Assert.DoesNotContain("/shop", (await Scan()).Main + (await Scan()).Text, StringComparison.Ordinal);
    }

    private Task<WebPage> Scan() => _shop.Stranger().Open("/t/" + _code);

    private static string Text(WebPage page, string selector) => page.Document.QuerySelector(selector)!.TextContent.Trim();

    private static Dictionary<string, string> Facts(WebPage page) =>
        page.Document.QuerySelectorAll(".facts dt").ToDictionary(dt => dt.TextContent, dt => dt.NextElementSibling!.TextContent.Trim());

    private static int Strokes(AngleSharp.Dom.IElement path) => path.GetAttribute("d")!.Count(c => c == 'M');
}
