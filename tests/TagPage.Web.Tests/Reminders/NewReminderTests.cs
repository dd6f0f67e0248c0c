using System.Net;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Words;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Reminders;

/// <summary>The owner makes a reminder, and its words for mail and SMS.</summary>
public sealed class NewReminderTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Household _home;
    private readonly Visitor _runa;

    public NewReminderTests()
    {
        _home = new Household(_shop);
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    private string NewPage => $"/shop/nudges/new?client={_home.Client}";

    private async Task<WebPage> Make(params (string Name, string Value)[] fields) => await _runa.Send(await _runa.Open(NewPage), fields);

    private async Task Sent(WebPage made) =>
        await _runa.Send(await _runa.Open(made.Location!.Replace("/nudges/", "/nudges/sent/", StringComparison.Ordinal)), ("How", "SmsApp"));

    [Fact]
    public async Task Reminder_that_was_made_but_not_sent_is_no_reason_to_wait()
    {
        await Make();

        Assert.Equal(HttpStatusCode.Found, (await Make()).Status);
        Assert.Equal(2, _shop.Records.Count("reminder"));
    }

    [Fact]
    public async Task Household_on_the_bench_and_the_card_of_its_racket_lead_to_a_reminder()
    {
        foreach (var page in new[] { "/shop", "/shop/due", $"/shop/rackets/{_home.Racket}" })
            Assert.NotNull((await _runa.Open(page)).Document.QuerySelector($"a[href='{NewPage}']"));
    }

    [Fact]
    public async Task Household_that_was_reminded_shrinks_to_a_line_until_it_may_be_reminded_again()
    {
        Assert.Null((await _runa.Open("/shop")).Document.QuerySelector(".household > details"));
        _shop.Records.Reminder(_home.Client, _home.Racket);
        Assert.Null((await _runa.Open("/shop")).Document.QuerySelector(".household > details"));
        _shop.Records.Change("UPDATE reminder SET sent_at = made_at, sent_how = 'SmsApp'");

        var line = (await _runa.Open("/shop")).Document.QuerySelector(".household > details")!;
        Assert.Equal("Odalys Ferran reminded today, 1 racket", string.Join(' ', line.QuerySelector("summary")!.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        Assert.Contains("Pim Ferran, racket 1", line.TextContent, StringComparison.Ordinal);

        _shop.Clock.Advance(TimeSpan.FromDays(14));
        Assert.Null((await _runa.Open("/shop")).Document.QuerySelector(".household > details"));
    }

    [Fact]
    public async Task Looking_at_the_words_makes_nothing_and_shows_no_link()
    {
        var page = await _runa.Open(NewPage);

        Assert.Contains("Pim, racket 1", page.Main, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("reminder"));
        Assert.DoesNotContain("/n/", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Made_twice_from_one_form_it_is_one_reminder_with_every_racket_that_is_due()
    {
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_home.Client, "Ana Ferran")), strungOn: new(2026, 9, 1));
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_home.Client, "Bo Ferran")), strungOn: new(2026, 11, 24));
        var form = await _runa.Open(NewPage);

        var made = await _runa.Send(form);
        Assert.Equal(made.Location, (await _runa.Send(form)).Location);

        Assert.Equal(1, _shop.Records.Count("reminder"));
        Assert.Equal(2, _shop.Records.Count("reminder_racket"));
    }

    [Fact]
    public async Task Second_reminder_within_fourteen_days_needs_the_owner_to_insist()
    {
        await Sent(await Make());
        var refused = await Make();
        Assert.Equal(HttpStatusCode.OK, refused.Status);
        Assert.Contains("less than 14 days ago", refused.Main, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("reminder"));

        var insisted = await Make(("Input.Insist", "true"));
        Assert.Equal(HttpStatusCode.Found, insisted.Status);
        await Sent(insisted);
        _shop.Clock.Advance(TimeSpan.FromDays(14));
        Assert.Equal(HttpStatusCode.Found, (await Make()).Status);
    }

    [Fact]
    public async Task Reminder_that_was_taken_back_does_not_count_and_another_number_of_days_can_be_set()
    {
        var made = await Make();
        await Sent(made);
        await _runa.Send(await _runa.Open(made.Location!.Replace("/nudges/", "/nudges/discard/", StringComparison.Ordinal)));
        var next = await Make();
        Assert.Equal(HttpStatusCode.Found, next.Status);
        await Sent(next);
        _shop.Records.Change("UPDATE shop SET days_between_reminders = 3");
        _shop.Clock.Advance(TimeSpan.FromDays(3));
        Assert.Equal(HttpStatusCode.Found, (await Make()).Status);
    }

    [Fact]
    public async Task Who_wants_no_reminders_gets_none_even_if_the_form_is_sent_by_hand()
    {
        var form = await _runa.Open(NewPage);
        _shop.Records.Change("UPDATE client SET reminders = 0");

        var refused = await _runa.Send(form, ("Input.Insist", "true"));

        Assert.Contains("wants no reminders", refused.Main, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("reminder"));
    }

    [Fact]
    public async Task Nothing_due_is_nothing_to_remind_of()
    {
        var form = await _runa.Open(NewPage);
        _shop.Records.Job(_home.Racket);

        Assert.Contains("nothing to remind them of", (await _runa.Send(form)).Main, StringComparison.Ordinal);
        Assert.Contains("Nothing is due for this client", (await _runa.Open(NewPage)).Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await _runa.Get("/shop/nudges/new?client=404")).StatusCode);
    }

    /// <summary>RFC 6068, sections 2 and 5: no blank or bare "&amp;" in the fields, line breaks as %0D%0A.</summary>
    [Fact]
    public async Task Mail_app_link_follows_its_RFC_and_carries_the_whole_text()
    {
        var page = await _runa.Open((await Make()).Location!);
        var link = page.Document.QuerySelector("a[href^='mailto:']")!.GetAttribute("href")!;

        Assert.Matches("^mailto:[A-Za-z0-9._%+-]+@[A-Za-z0-9.-]+\\?subject=[A-Za-z0-9._~%!$'()*,;:@-]*&body=[A-Za-z0-9._~%!$'()*,;:@-]*$", link);
        var body = Uri.UnescapeDataString(link.Split("&body=")[1]);
        Assert.DoesNotMatch("[^\r]\n", body);
        Assert.Equal(page.Document.GetElementById("mail-text")!.TextContent.Trim(), body.ReplaceLineEndings("\n").Trim());
    }

    /// <summary>RFC 5724, 2.2: sms:, a telephone-subscriber of RFC 3966 (global: + and digits), then ?body= with all else escaped.</summary>
    [Fact]
    public async Task Sms_app_link_follows_its_RFC_and_carries_the_whole_text()
    {
        var page = await _runa.Open((await Make()).Location!);
        var link = page.Document.QuerySelector("a[href^='sms:']")!.GetAttribute("href")!;

        Assert.Matches("^sms:\\+[0-9]+\\?body=([A-Za-z0-9._~-]|%[0-9A-F]{2})+$", link);
        Assert.StartsWith("sms:" + OnFile.CanaryPhone, link, StringComparison.Ordinal);
        Assert.Equal(page.Document.GetElementById("sms-text")!.TextContent, Uri.UnescapeDataString(link.Split("?body=")[1]));
    }

    [Theory]
    [InlineData("en", "Pim Ferran", "Pim, racket 1", 1)]
    [InlineData("en", "Žofie Ferran", "racket 1", 1)]
    [InlineData("de", "Pim Ferran", "Pim, Schläger 1", 1)]
    [InlineData("ja", "鷺沢 澪", "鷺沢", 2)]
    [InlineData("zh", "鷺沢 澪", "鷺沢", 2)]
    public async Task Sms_is_one_message_and_two_in_Japanese_and_Chinese(string language, string player, string names, int most)
    {
        _shop.Records.Change("UPDATE client SET language = @language", new { language });
        _shop.Records.Change("UPDATE player SET name = @player", new { player });

        var page = await _runa.Open((await Make()).Location!);

        var text = page.Document.GetElementById("sms-text")!.TextContent;
        Assert.Contains(names, text, StringComparison.Ordinal);
        Assert.Contains("https://tag.example/n/", text, StringComparison.Ordinal);
        if (most == 1)
            Assert.InRange(Gsm7.Length(text)!.Value, 1, 160);
        Assert.InRange(Sms.Of(text).Parts, 1, most);
    }

    [Fact]
    public async Task With_many_rackets_the_sms_is_still_one_message()
    {
        for (var n = 2; n <= 12; n++)
            _shop.Records.Job(_shop.Records.Racket(_home.Player, number: n), strungOn: new(2026, 5, 1));

        var text = (await _runa.Open((await Make()).Location!)).Document.GetElementById("sms-text")!.TextContent;

        Assert.InRange(Gsm7.Length(text)!.Value, 1, 160);
    }

    [Fact]
    public async Task Noted_as_sent_it_says_how_and_the_due_list_knows()
    {
        var made = (await Make()).Location!;
        var page = await _runa.Open(made.Replace("/nudges/", "/nudges/sent/", StringComparison.Ordinal));
        Assert.Contains("reminder not sent yet, written today", (await _runa.Open("/shop/due")).Main, StringComparison.Ordinal);

        await _runa.Send(page, ("How", "SmsApp"));

        Assert.Contains("sent by SMS on 25 Nov 2026", (await _runa.Open(made)).Main, StringComparison.Ordinal);
        Assert.Contains("reminded today", (await _runa.Open("/shop/due")).Main, StringComparison.Ordinal);
    }
}
