using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Hours and pauses that Odalys notes for Pim.</summary>
public sealed class PlayTests : OdalysPhone
{
    [Fact]
    public async Task Hours_are_noted_with_one_press_move_the_date_and_can_be_taken_back()
    {
        var due = Shop.Records.Text("SELECT due_on FROM racket");
        var page = await OpenRacket();

        await Phone.Send(page, page.Form($"/my/play/{Racket}?handler=Hours"), ("hours", "3"));

        Assert.Equal("2026-11-25|3.0", Shop.Records.Text("SELECT played_on || '|' || hours FROM logged_hours"));
        Assert.NotEqual(due, Shop.Records.Text("SELECT due_on FROM racket"));
        page = await OpenRacket();
        await Phone.Send(page, page.Form("?handler=TakeBack"));
        Assert.Equal(0, Shop.Records.Count("logged_hours"));
        Assert.Equal(due, Shop.Records.Text("SELECT due_on FROM racket"));
    }

    [Fact]
    public async Task Fifty_presses_of_one_opened_page_note_hours_once_and_a_page_opened_anew_notes_more()
    {
        var page = await OpenRacket();
        for (var n = 0; n < 50; n++)
            await Phone.Send(page, page.Form($"/my/play/{Racket}?handler=Hours"), ("hours", "1"));
        Assert.Equal(1, Shop.Records.Count("logged_hours"));

        page = await OpenRacket();
        await Phone.Send(page, page.Form($"/my/play/{Racket}?handler=Hours"), ("hours", "1"));

        Assert.Equal(2, Shop.Records.Count("logged_hours"));
    }

    [Fact]
    public async Task Presses_beyond_the_hours_of_a_day_are_refused_with_the_hours_noted()
    {
        for (var n = 0; n < 8; n++)
            await Press();

        Assert.Contains("Already logged for 25 Nov 2026, all rackets together: 24 h. A day has no more than 24.", (await Press()).Main, StringComparison.Ordinal);
        Assert.Equal("24", Shop.Records.Text("SELECT SUM(hours) FROM logged_hours"));

        async Task<WebPage> Press()
        {
            var page = await OpenRacket();
            return await Phone.Send(page, page.Form($"/my/play/{Racket}?handler=Hours"), ("hours", "3"));
        }
    }

    [Theory]
    [InlineData("hours")]
    [InlineData("reading")]
    public async Task Form_without_its_own_key_notes_nothing_and_says_nothing_was_saved(string what)
    {
        var page = what == "hours" ? await OpenRacket() : await Phone.Open($"/my/reading/{Racket}");
        var form = what == "hours" ? page.Form($"/my/play/{Racket}?handler=Hours") : page.Document.QuerySelector<IHtmlFormElement>("main form[method=post]")!;
        foreach (var key in form.QuerySelectorAll("[name$=ormKey]"))
            key.Remove();

        await Phone.Send(page, form, ("hours", "1"), ("Input.Value", "540"));

        Assert.Equal(0, Shop.Records.Count("logged_hours") + Shop.Records.Count("reading"));
        Assert.DoesNotContain("Noted", (await OpenRacket()).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("25")]
    [InlineData("many")]
    [InlineData("")]
    public async Task Hours_that_a_day_does_not_have_are_not_noted(string hours)
    {
        var page = await OpenRacket();
        await Phone.Send(page, page.Form($"/my/play/{Racket}?handler=Hours"), ("hours", hours));

        Assert.Equal(0, Shop.Records.Count("logged_hours"));
    }

    [Fact]
    public async Task Earlier_days_and_several_at_once_are_noted_with_a_form_that_says_what_is_wrong()
    {
        var form = await Phone.Open($"/my/hours/{Racket}");
        var refused = await Phone.Send(form, ("Input.PlayedOn", "2026-11-20"), ("Input.LastDay", "2026-11-18"), ("Input.Hours", "3"));
        Assert.Equal("Choose a last day on or after the first one, at most 62 days in all.", Assert.Single(refused.Errors));
        Assert.Equal("2026-11-20", refused.Document.QuerySelector("#Input_PlayedOn")!.GetAttribute("value"));
        refused = await Phone.Send(refused, ("Input.LastDay", "2026-11-21"), ("Input.Hours", "48.5"));
        Assert.Equal("Enter the hours played: 0 or more, at most 48.", Assert.Single(refused.Errors));
        refused = await Phone.Send(refused, ("Input.PlayedOn", "soon"), ("Input.LastDay", ""), ("Input.Hours", "many"));
        Assert.Equal(3, refused.Errors.Count);
        refused = await Phone.Send(refused, ("Input.PlayedOn", "2026-11-24"), ("Input.LastDay", "2026-12-01"), ("Input.Hours", "3"));
        Assert.Equal("This day is in the future. Choose today or earlier.", Assert.Single(refused.Errors));
        Assert.Equal(0, Shop.Records.Count("logged_hours"));

        await Phone.Send(refused, ("Input.PlayedOn", "2026-11-18"), ("Input.LastDay", "2026-11-20"), ("Input.Hours", "4,5"));
        Assert.Equal("2026-11-18 1.5, 2026-11-19 1.5, 2026-11-20 1.5", Shop.Records.Text("SELECT group_concat(played_on || ' ' || hours, ', ') FROM logged_hours"));

        await Phone.Send(await Phone.Open($"/my/hours/{Racket}"), ("Input.PlayedOn", "2026-11-10"), ("Input.LastDay", "2026-11-10"), ("Input.Hours", "0"));
        Assert.Equal("0", Shop.Records.Text("SELECT hours FROM logged_hours WHERE played_on = '2026-11-10'"));
    }

    [Fact]
    public async Task Pause_begins_with_one_press_moves_the_date_and_ends_with_another()
    {
        var due = Shop.Records.Text("SELECT due_on FROM racket");
        var page = await OpenRacket();
        await Phone.Send(page, page.Form("?handler=Pause"));
        await Phone.Send(page, page.Form("?handler=Pause"));
        Assert.Equal("2026-11-25|", Shop.Records.Text("SELECT from_on || '|' || COALESCE(to_on, '') FROM pause"));
        Assert.Equal(1, Shop.Records.Count("pause"));
        Assert.True(string.CompareOrdinal(Shop.Records.Text("SELECT due_on FROM racket"), due) >= 0);

        Shop.Clock.Advance(TimeSpan.FromDays(10));
        page = await OpenRacket();
        Assert.Contains("Pim has not been playing since 25 Nov 2026", page.Main, StringComparison.Ordinal);
        await Phone.Send(page, page.Form("?handler=Resume"));

        Assert.Equal("2026-12-04", Shop.Records.Text("SELECT to_on FROM pause"));
        Assert.DoesNotContain("has not been playing", (await OpenRacket()).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pause_that_ends_on_its_first_day_never_was()
    {
        var page = await OpenRacket();
        await Phone.Send(page, page.Form("?handler=Pause"));
        page = await OpenRacket();
        await Phone.Send(page, page.Form("?handler=Resume"));

        Assert.Equal(0, Shop.Records.Count("pause"));
    }
}
