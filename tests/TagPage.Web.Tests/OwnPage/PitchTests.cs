using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>What Odalys’ phone hears of Pim’s strings.</summary>
public sealed class PitchTests : OdalysPhone
{
    [Fact]
    public async Task Pitch_sent_twice_from_one_opened_page_is_kept_once()
    {
        var page = await Phone.Open($"/my/reading/{Racket}");
        for (var n = 0; n < 2; n++)
            await Phone.Send(page, ("Input.Value", "540"));

        Assert.Equal(1, Shop.Records.Count("reading"));
    }

    [Fact]
    public async Task Pitch_typed_is_kept_apart_from_the_shops_instruments_and_its_loss_is_shown()
    {
        await Phone.Send(await Phone.Open($"/my/reading/{Racket}"), ("Input.Value", "600"));
        Shop.Clock.Advance(TimeSpan.FromDays(14));
        await Phone.Send(await Phone.Open($"/my/reading/{Racket}"), ("Input.Value", "570,5"));

        var page = await Phone.Open($"/my/reading/{Racket}");

        Assert.Equal("Clients’ phones|Hertz|2", Shop.Records.Text("SELECT i.name || '|' || i.scale || '|' || COUNT(*) FROM reading g JOIN instrument i ON i.id = g.instrument_id WHERE g.first = 0"));
        // 100 · (1 − (570.5/600)²) = 9.6, by hand.
        Assert.Contains("10 %", page.Document.QuerySelector("table")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pitch_far_from_what_this_racket_sounded_like_before_is_asked_about_once()
    {
        await Phone.Send(await Phone.Open($"/my/reading/{Racket}"), ("Input.Value", "588"));

        var asked = await Phone.Send(await Phone.Open($"/my/reading/{Racket}"), ("Input.Value", "310"));
        Assert.StartsWith("310 Hz is far from this racket’s usual 588 Hz", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(1, Shop.Records.Count("reading"));

        var another = await Phone.Send(asked, ("Input.Value", "1200"));
        Assert.StartsWith("1200 Hz is far", Assert.Single(another.Errors), StringComparison.Ordinal);
        await Phone.Send(another);
        Assert.Equal("1200", Shop.Records.Text("SELECT value FROM reading ORDER BY id DESC LIMIT 1"));
        Assert.Null((await Phone.Send(await Phone.Open($"/my/reading/{Racket}"), ("Input.Value", "560"))).Document.QuerySelector(".error"));
    }

    [Fact]
    public async Task Shop_calls_the_phones_something_else_and_nothing_changes()
    {
        await Phone.Send(await Phone.Open($"/my/reading/{Racket}"), ("Input.Value", "600"));
        Shop.Records.Change("UPDATE instrument SET name = 'what they hear at home' WHERE scale = 'Hertz'; INSERT INTO instrument (name, scale) VALUES ('Clients’ phones', 'Hertz')");
        Shop.Clock.Advance(TimeSpan.FromDays(14));

        await Phone.Send(await Phone.Open($"/my/reading/{Racket}"), ("Input.Value", "570"));

        Assert.Equal("what they hear at home|2", Shop.Records.Text("SELECT i.name || '|' || COUNT(*) FROM reading g JOIN instrument i ON i.id = g.instrument_id WHERE g.first = 0 GROUP BY i.id"));
        Assert.Contains("10 %", (await Phone.Open($"/my/reading/{Racket}")).Document.QuerySelector("table")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("299")]
    [InlineData("1401")]
    [InlineData("high")]
    [InlineData("")]
    public async Task Pitch_that_no_strings_have_is_refused(string hertz)
    {
        var answer = await Phone.Send(await Phone.Open($"/my/reading/{Racket}"), ("Input.Value", hertz));

        Assert.Contains("between 300 and 1400", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal(0, Shop.Records.Count("reading"));
    }

    [Fact]
    public async Task Microphone_is_allowed_on_the_reading_page_alone()
    {
        static string Policy(WebPage page) => page.Response.Headers.GetValues("Permissions-Policy").Single();

        Assert.Contains("microphone=(self)", Policy(await Phone.Open($"/my/reading/{Racket}")), StringComparison.Ordinal);
        Assert.Contains("microphone=()", Policy(await OpenRacket()), StringComparison.Ordinal);
        Assert.Contains("microphone=()", Policy(await Shop.Owner().Open("/shop")), StringComparison.Ordinal);
    }
}
