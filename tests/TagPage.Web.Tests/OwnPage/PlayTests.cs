using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Hours, pauses, what-if and readings that Odalys notes for Pim.</summary>
public sealed class PlayTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _racket;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _, _racket, _, _) = _shop.Records.Family();
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    private Task<WebPage> Racket() => _phone.Open($"/my/rackets/{_racket}");

    [Fact]
    public async Task Hours_are_noted_with_one_press_move_the_date_and_can_be_taken_back()
    {
        var due = _shop.Records.Text("SELECT due_on FROM racket");
        var page = await Racket();

        await _phone.Send(page, page.Form($"/my/play/{_racket}?handler=Hours"), ("hours", "3"));

        Assert.Equal("2026-11-25|3.0", _shop.Records.Text("SELECT played_on || '|' || hours FROM logged_hours"));
        Assert.NotEqual(due, _shop.Records.Text("SELECT due_on FROM racket"));
        page = await Racket();
        await _phone.Send(page, page.Form("?handler=TakeBack"));
        Assert.Equal(0, _shop.Records.Count("logged_hours"));
        Assert.Equal(due, _shop.Records.Text("SELECT due_on FROM racket"));
    }

    [Fact]
    public async Task Fifty_presses_of_one_opened_page_note_hours_once_and_a_page_opened_anew_notes_more()
    {
        var page = await Racket();
        for (var n = 0; n < 50; n++)
            await _phone.Send(page, page.Form($"/my/play/{_racket}?handler=Hours"), ("hours", "1"));
        Assert.Equal(1, _shop.Records.Count("logged_hours"));

        page = await Racket();
        await _phone.Send(page, page.Form($"/my/play/{_racket}?handler=Hours"), ("hours", "1"));

        Assert.Equal(2, _shop.Records.Count("logged_hours"));
    }

    [Fact]
    public async Task Presses_beyond_the_hours_of_a_day_are_refused_with_the_hours_noted()
    {
        for (var n = 0; n < 8; n++)
            await Press();

        Assert.Contains("Already noted on 25 Nov 2026, all rackets together: 24 h. A day has no more than 24.", (await Press()).Main, StringComparison.Ordinal);
        Assert.Equal("24", _shop.Records.Text("SELECT SUM(hours) FROM logged_hours"));

        async Task<WebPage> Press()
        {
            var page = await Racket();
            return await _phone.Send(page, page.Form($"/my/play/{_racket}?handler=Hours"), ("hours", "3"));
        }
    }

    [Fact]
    public async Task Pitch_sent_twice_from_one_opened_page_is_kept_once()
    {
        var page = await _phone.Open($"/my/reading/{_racket}");
        for (var n = 0; n < 2; n++)
            await _phone.Send(page, ("Input.Value", "540"));

        Assert.Equal(1, _shop.Records.Count("reading"));
    }

    [Theory]
    [InlineData("hours")]
    [InlineData("reading")]
    public async Task Form_without_its_own_key_notes_nothing_and_says_nothing_was_saved(string what)
    {
        var page = what == "hours" ? await Racket() : await _phone.Open($"/my/reading/{_racket}");
        var form = what == "hours" ? page.Form($"/my/play/{_racket}?handler=Hours") : page.Document.QuerySelector<IHtmlFormElement>("main form[method=post]")!;
        foreach (var key in form.QuerySelectorAll("[name$=ormKey]"))
            key.Remove();

        await _phone.Send(page, form, ("hours", "1"), ("Input.Value", "540"));

        Assert.Equal(0, _shop.Records.Count("logged_hours") + _shop.Records.Count("reading"));
        Assert.DoesNotContain("Noted", (await Racket()).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("25")]
    [InlineData("many")]
    [InlineData("")]
    public async Task Hours_that_a_day_does_not_have_are_not_noted(string hours)
    {
        var page = await Racket();
        await _phone.Send(page, page.Form($"/my/play/{_racket}?handler=Hours"), ("hours", hours));

        Assert.Equal(0, _shop.Records.Count("logged_hours"));
    }

    [Fact]
    public async Task Earlier_days_and_several_at_once_are_noted_with_a_form_that_says_what_is_wrong()
    {
        var form = await _phone.Open($"/my/hours/{_racket}");
        var refused = await _phone.Send(form, ("Input.PlayedOn", "2026-11-20"), ("Input.LastDay", "2026-11-18"), ("Input.Hours", "3"));
        Assert.Equal("Choose a last day on or after the first one, at most 62 days in all.", Assert.Single(refused.Errors));
        Assert.Equal("2026-11-20", refused.Document.QuerySelector("#Input_PlayedOn")!.GetAttribute("value"));
        refused = await _phone.Send(refused, ("Input.LastDay", "2026-11-21"), ("Input.Hours", "48.5"));
        Assert.Equal("Enter the hours played: 0 or more, at most 48.", Assert.Single(refused.Errors));
        refused = await _phone.Send(refused, ("Input.PlayedOn", "soon"), ("Input.LastDay", ""), ("Input.Hours", "many"));
        Assert.Equal(3, refused.Errors.Count);
        refused = await _phone.Send(refused, ("Input.PlayedOn", "2026-11-24"), ("Input.LastDay", "2026-12-01"), ("Input.Hours", "3"));
        Assert.Equal("This day is in the future. Choose today or earlier.", Assert.Single(refused.Errors));
        Assert.Equal(0, _shop.Records.Count("logged_hours"));

        await _phone.Send(refused, ("Input.PlayedOn", "2026-11-18"), ("Input.LastDay", "2026-11-20"), ("Input.Hours", "4,5"));
        Assert.Equal("2026-11-18 1.5, 2026-11-19 1.5, 2026-11-20 1.5", _shop.Records.Text("SELECT group_concat(played_on || ' ' || hours, ', ') FROM logged_hours"));

        await _phone.Send(await _phone.Open($"/my/hours/{_racket}"), ("Input.PlayedOn", "2026-11-10"), ("Input.LastDay", "2026-11-10"), ("Input.Hours", "0"));
        Assert.Equal("0", _shop.Records.Text("SELECT hours FROM logged_hours WHERE played_on = '2026-11-10'"));
    }

    [Fact]
    public async Task Pause_begins_with_one_press_moves_the_date_and_ends_with_another()
    {
        var due = _shop.Records.Text("SELECT due_on FROM racket");
        var page = await Racket();
        await _phone.Send(page, page.Form("?handler=Pause"));
        await _phone.Send(page, page.Form("?handler=Pause"));
        Assert.Equal("2026-11-25|", _shop.Records.Text("SELECT from_on || '|' || COALESCE(to_on, '') FROM pause"));
        Assert.Equal(1, _shop.Records.Count("pause"));
        Assert.True(string.CompareOrdinal(_shop.Records.Text("SELECT due_on FROM racket"), due) >= 0);

        _shop.Clock.Advance(TimeSpan.FromDays(10));
        page = await Racket();
        Assert.Contains("Pim has not been playing since 25 Nov 2026", page.Main, StringComparison.Ordinal);
        await _phone.Send(page, page.Form("?handler=Resume"));

        Assert.Equal("2026-12-04", _shop.Records.Text("SELECT to_on FROM pause"));
        Assert.DoesNotContain("has not been playing", (await Racket()).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pause_that_ends_on_its_first_day_never_was()
    {
        var page = await Racket();
        await _phone.Send(page, page.Form("?handler=Pause"));
        page = await Racket();
        await _phone.Send(page, page.Form("?handler=Resume"));

        Assert.Equal(0, _shop.Records.Count("pause"));
    }

    [Fact]
    public async Task What_if_shows_another_date_and_saves_nothing()
    {
        var before = _shop.Database.Dump();

        var asked = await _phone.Open($"/my/what-if/{_racket}?times=6&hours=2,5&role=InTurn");

        Assert.Contains("15 h a week", asked.Main, StringComparison.Ordinal);
        Assert.NotNull(asked.Document.QuerySelector("[role=status]"));
        Assert.Equal("2,5", asked.Document.QuerySelector("[name=Hours]")!.GetAttribute("value"));
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task What_if_without_play_says_once_that_there_is_none()
    {
        var asked = await _phone.Open($"/my/what-if/{_racket}?times=0&hours=1&role=InTurn");

        Assert.Equal(2, asked.Main.Split("no hours of play to count").Length);
        Assert.DoesNotContain("noted", asked.Document.QuerySelector("main section")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("?times=6&hours=2,5&role=InTurn")]
    public async Task What_if_leaves_the_shops_own_date_out(string query)
    {
        static List<string> Dates(WebPage page) => [.. page.Document.QuerySelectorAll("strong").Select(d => d.TextContent)];
        var without = Dates(await _phone.Open($"/my/what-if/{_racket}{query}"));
        _shop.Records.Change("UPDATE racket SET own_date = '2027-05-01'");

        var page = await _phone.Open($"/my/what-if/{_racket}{query}");

        Assert.Equal(without, Dates(page));
        Assert.Contains("The date chosen by the shop, 1 May 2027, is left out here.", page.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?times=often&hours=1")]
    [InlineData("?times=22&hours=1")]
    [InlineData("?times=-1&hours=1")]
    [InlineData("")]
    public async Task What_if_without_numbers_shows_the_date_of_now_alone(string query)
    {
        var page = await _phone.Open($"/my/what-if/{_racket}{query}");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Null(page.Document.QuerySelector("[role=status]"));
    }

    [Fact]
    public async Task Pitch_typed_is_kept_apart_from_the_shops_instruments_and_its_loss_is_shown()
    {
        await _phone.Send(await _phone.Open($"/my/reading/{_racket}"), ("Input.Value", "600"));
        _shop.Clock.Advance(TimeSpan.FromDays(14));
        await _phone.Send(await _phone.Open($"/my/reading/{_racket}"), ("Input.Value", "570,5"));

        var page = await _phone.Open($"/my/reading/{_racket}");

        Assert.Equal("Clients’ phones|Hertz|2", _shop.Records.Text("SELECT i.name || '|' || i.scale || '|' || COUNT(*) FROM reading g JOIN instrument i ON i.id = g.instrument_id WHERE g.first = 0"));
        // 100 · (1 − (570.5/600)²) = 9.6, by hand.
        Assert.Contains("10 %", page.Document.QuerySelector("table")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pitch_far_from_what_this_racket_sounded_like_before_is_asked_about_once()
    {
        await _phone.Send(await _phone.Open($"/my/reading/{_racket}"), ("Input.Value", "588"));

        var asked = await _phone.Send(await _phone.Open($"/my/reading/{_racket}"), ("Input.Value", "310"));
        Assert.StartsWith("310 Hz is far from the 588 Hz", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("reading"));

        var another = await _phone.Send(asked, ("Input.Value", "1200"));
        Assert.StartsWith("1200 Hz is far", Assert.Single(another.Errors), StringComparison.Ordinal);
        await _phone.Send(another);
        Assert.Equal("1200", _shop.Records.Text("SELECT value FROM reading ORDER BY id DESC LIMIT 1"));
        Assert.Null((await _phone.Send(await _phone.Open($"/my/reading/{_racket}"), ("Input.Value", "560"))).Document.QuerySelector(".error"));
    }

    [Fact]
    public async Task Shop_calls_the_phones_something_else_and_nothing_changes()
    {
        await _phone.Send(await _phone.Open($"/my/reading/{_racket}"), ("Input.Value", "600"));
        _shop.Records.Change("UPDATE instrument SET name = 'what they hear at home' WHERE scale = 'Hertz'; INSERT INTO instrument (name, scale) VALUES ('Clients’ phones', 'Hertz')");
        _shop.Clock.Advance(TimeSpan.FromDays(14));

        await _phone.Send(await _phone.Open($"/my/reading/{_racket}"), ("Input.Value", "570"));

        Assert.Equal("what they hear at home|2", _shop.Records.Text("SELECT i.name || '|' || COUNT(*) FROM reading g JOIN instrument i ON i.id = g.instrument_id WHERE g.first = 0 GROUP BY i.id"));
        Assert.Contains("10 %", (await _phone.Open($"/my/reading/{_racket}")).Document.QuerySelector("table")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("299")]
    [InlineData("1401")]
    [InlineData("high")]
    [InlineData("")]
    public async Task Pitch_that_no_strings_have_is_refused(string hertz)
    {
        var answer = await _phone.Send(await _phone.Open($"/my/reading/{_racket}"), ("Input.Value", hertz));

        Assert.Contains("between 300 and 1400", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("reading"));
    }

    [Fact]
    public async Task Microphone_is_allowed_on_the_reading_page_alone()
    {
        static string Policy(WebPage page) => page.Response.Headers.GetValues("Permissions-Policy").Single();

        Assert.Contains("microphone=(self)", Policy(await _phone.Open($"/my/reading/{_racket}")), StringComparison.Ordinal);
        Assert.Contains("microphone=()", Policy(await Racket()), StringComparison.Ordinal);
        Assert.Contains("microphone=()", Policy(await _shop.Owner().Open("/shop")), StringComparison.Ordinal);
    }
}
