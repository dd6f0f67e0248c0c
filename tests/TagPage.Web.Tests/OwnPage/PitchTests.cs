using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>What Odalys’ phone hears of Pim’s strings.</summary>
public sealed class PitchTests : IAsyncLifetime
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
    public async Task Pitch_sent_twice_from_one_opened_page_is_kept_once()
    {
        var page = await _phone.Open($"/my/reading/{_racket}");
        for (var n = 0; n < 2; n++)
            await _phone.Send(page, ("Input.Value", "540"));

        Assert.Equal(1, _shop.Records.Count("reading"));
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
