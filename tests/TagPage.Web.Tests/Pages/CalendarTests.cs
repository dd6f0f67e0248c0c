using System.Net;
using System.Text;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>The calendar file of Pim's racket, due on 9 December 2026, against RFC 5545.</summary>
public sealed class CalendarTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _code;
    private readonly long _racket;

    public CalendarTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _code, _) = _shop.Records.Family();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task File_is_offered_by_the_page_and_saved_under_a_name()
    {
        var page = await _shop.Stranger().Open("/t/" + _code);
        var link = page.Document.QuerySelector("a[href$='restring.ics']")!.GetAttribute("href")!;

        var file = await _shop.Stranger().Get(link);

        Assert.Equal("text/calendar; charset=utf-8", file.Content.Headers.ContentType!.ToString());
        Assert.Equal("attachment; filename=restring.ics", file.Content.Headers.ContentDisposition!.ToString()[..33]);
        Assert.False(file.Headers.Contains("Set-Cookie"));
    }

    // RFC 5545, 3.6 and 3.6.1: VERSION and PRODID once in a calendar, UID and DTSTAMP once in an event.
    [Theory]
    [InlineData("VERSION:2.0")]
    [InlineData("PRODID:-//TagPage//Restring by//EN")]
    [InlineData("DTSTAMP:20261125T100000Z")]
    [InlineData("DTSTART;VALUE=DATE:20261209")]
    [InlineData("SUMMARY:Restring racket 1 (red)")]
    [InlineData("TRANSP:TRANSPARENT")]
    public async Task What_the_standard_asks_for_is_there_once(string line) =>
        Assert.Single(await Lines(), l => l == line);

    [Fact]
    public async Task End_of_a_whole_day_is_the_day_after() =>
        Assert.Contains("DTEND;VALUE=DATE:20261210", await Lines());

    [Fact]
    public async Task Address_and_shop_are_in_it()
    {
        var lines = await Lines();

        Assert.Contains($"URL:https://tag.example/t/{_code}", lines);
        Assert.Contains($@"DESCRIPTION:Ferrygate Racket Bench\n+44 20 7946 0182\nhttps://tag.example/t/{_code}", lines);
    }

    // RFC 5545, 3.8.6.3: a trigger may be an instant, in UTC; 3.6.6: a display alarm needs a description.
    [Theory]
    [InlineData("Etc/UTC", "20261202T090000Z", "20261203T090000Z")]
    [InlineData("Asia/Tokyo", "20261202T000000Z", "20261203T000000Z")]
    [InlineData("America/Los_Angeles", "20261202T170000Z", "20261203T170000Z")]
    public async Task Alarm_rings_a_week_before_at_nine_by_the_shops_clock_or_on_the_next_morning(string zone, string instant, string later)
    {
        _shop.Records.Change("UPDATE shop SET time_zone = @zone", new { zone });
        var lines = await Lines();
        var alarm = lines.SkipWhile(l => l != "BEGIN:VALARM").TakeWhile(l => l != "END:VALARM").ToList();
        Assert.Contains("ACTION:DISPLAY", alarm);
        Assert.Contains($"TRIGGER;VALUE=DATE-TIME:{instant}", alarm);
        Assert.Contains(alarm, l => l.StartsWith("DESCRIPTION:", StringComparison.Ordinal));

        _shop.Clock.Advance(TimeSpan.FromDays(7.5));
        Assert.Contains($"TRIGGER;VALUE=DATE-TIME:{later}", await Lines());
    }

    [Fact]
    public async Task Nothing_rings_once_the_day_has_begun()
    {
        _shop.Clock.Advance(TimeSpan.FromDays(13.9));
        Assert.Contains("TRIGGER;VALUE=DATE-TIME:20261209T090000Z", await Lines());

        _shop.Clock.Advance(TimeSpan.FromHours(4));
        Assert.DoesNotContain("BEGIN:VALARM", await Lines());
    }

    [Fact]
    public async Task Entry_stays_the_same_one_and_a_later_file_replaces_it()
    {
        var (uid, sequence) = (await Value("UID"), await Value("SEQUENCE"));
        _shop.Records.Change("UPDATE racket SET own_date = '2026-12-24'");
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));

        Assert.Equal(uid, await Value("UID"));
        Assert.Equal(int.Parse(sequence, null) + 1, int.Parse(await Value("SEQUENCE"), null));
        Assert.Contains("DTSTART;VALUE=DATE:20261224", await Lines());
    }

    [Fact]
    public async Task New_strings_move_the_entry_with_its_alarm_and_leave_no_second_one()
    {
        var (uid, number) = (await Value("UID"), int.Parse(await Value("SEQUENCE"), null));

        _shop.Records.Job(_racket, new(2026, 11, 24));

        Assert.Equal(uid, await Value("UID"));
        Assert.True(int.Parse(await Value("SEQUENCE"), null) > number);
        Assert.Contains("DTSTART;VALUE=DATE:20270101", await Lines());
        Assert.Contains("TRIGGER;VALUE=DATE-TIME:20261225T090000Z", await Lines());
    }

    [Fact]
    public async Task Number_only_grows_also_where_a_date_goes_back_and_another_racket_is_another_entry()
    {
        var numbers = new List<int> { int.Parse(await Value("SEQUENCE"), null) };
        foreach (var day in new[] { "'2026-12-24'", "'2026-12-30'", "'2026-12-24'", "NULL" })
        {
            _shop.Records.Change($"UPDATE racket SET own_date = {day}");
            numbers.Add(int.Parse(await Value("SEQUENCE"), null));
        }
        Assert.Equal(numbers.Order().Distinct(), numbers);
        _shop.Records.Racket(1, 2);
        Assert.Equal(2, _shop.Records.Count("(SELECT DISTINCT calendar_uid FROM racket)"));
    }

    // RFC 5545, 3.1: lines end in CRLF and are folded at 75 octets; ours never within a character.
    [Fact]
    public async Task Long_lines_are_folded_between_characters()
    {
        _shop.Records.Change("UPDATE shop SET name = @name", new { name = new string('é', 80) });

        var text = await Text();

        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.DoesNotContain('\uFFFD', text);
        Assert.Contains(new string('é', 80), text.Replace("\r\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Characters_of_four_octets_come_through_whole()
    {
        var name = string.Concat(Enumerable.Repeat("a🎾é", 20));
        _shop.Records.Change("UPDATE shop SET name = @name", new { name });

        var text = await Text();

        Assert.DoesNotContain('\uFFFD', text);
        Assert.Contains(name, text.Replace("\r\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    // RFC 5545, 3.3.11: backslash, semicolon and comma in a text are escaped.
    [Fact]
    public async Task Marks_of_the_format_are_escaped()
    {
        _shop.Records.Change(@"UPDATE racket SET tape_colour = 'red;,\END'");

        Assert.Contains(@"SUMMARY:Restring racket 1 (red\;\,\\END)", await Lines());
    }

    [Theory]
    [InlineData("UPDATE racket SET state = 'Resting'")]
    [InlineData("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'")]
    [InlineData("DELETE FROM job")]
    public async Task Without_a_date_there_is_no_file(string change)
    {
        _shop.Records.Change(change);

        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Get($"/t/{_code}/restring.ics")).StatusCode);
    }

    private async Task<string> Text() =>
        Encoding.UTF8.GetString(await (await _shop.Stranger().Get($"/t/{_code}/restring.ics")).Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));

    /// <summary>The file's lines as a calendar reads them, unfolded.</summary>
    private async Task<string[]> Lines() => (await Text()).Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n");

    private async Task<string> Value(string property) =>
        Assert.Single(await Lines(), l => l.StartsWith(property + ":", StringComparison.Ordinal))[(property.Length + 1)..];
}
