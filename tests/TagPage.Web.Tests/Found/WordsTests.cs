using System.Net;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Found;

/// <summary>Ready-made answers and messages of finders, up to the outbox.</summary>
public sealed class WordsTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _code;

    public WordsTests()
    {
        _shop.Records.Shop();
        _code = _shop.Records.Family().Tag;
        _shop.Records.Agree("Message", lost: false);
    }

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("AtDesk", "It is at the desk here")]
    [InlineData("HaveIt", "I have it with me")]
    [InlineData("StillThere", "It is still lying where I saw it")]
    public async Task Ready_made_answer_takes_one_press_and_is_passed_on(string kind, string words)
    {
        var finder = _shop.Stranger();

        var sent = await finder.Says(_code, kind);

        Assert.Equal($"/t/{_code}/found#thanks", sent.Location);
        var page = (await finder.Open(sent.Location!)).Document;
        Assert.NotNull(page.QuerySelector("details:not([open]) > summary ~ #answers ~ #message"));
        var thanks = page.QuerySelector("#thanks[tabindex='-1']")!;
        Assert.StartsWith("Thank you", thanks.TextContent.Trim(), StringComparison.Ordinal);
        Assert.Equal(kind != "AtDesk", thanks.TextContent.Contains("leave the racket at the nearest desk", StringComparison.Ordinal));
        Assert.Equal(1, _shop.Records.Events($"kind = '{kind}'"));
        Assert.Contains(words, Assert.Single(await _shop.MailsSent()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("AtDesk")]
    [InlineData("StillThere")]
    public async Task Answer_that_needs_a_place_asks_which_and_passes_it_on(string kind)
    {
        var finder = _shop.Stranger();

        var asked = await finder.Says(_code, kind, place: "");
        Assert.Equal(["Say which place that is, so that the racket can be found."], asked.Errors);
        Assert.Equal((0, 0), (_shop.Records.Events(), _shop.Records.Count("outbox")));
        Assert.Equal(["Shorten this to 100 characters; it has 101."], (await finder.Says(_code, kind, place: new string('x', 101))).Errors);

        await finder.Send(asked, asked.Form("/answer"), ("says", kind), ("Input.Place", "Eastmere hall, http://evil.example"));

        Assert.Equal("Eastmere hall, http://evil.example", _shop.Records.Text("SELECT message FROM found_event"));
        var mail = Assert.Single(await _shop.MailsSent());
        Assert.Contains("> Eastmere hall, ", mail, StringComparison.Ordinal);
        Assert.DoesNotContain("evil.example", mail, StringComparison.Ordinal);
        Assert.Contains("Do not open links", mail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Shown")]
    [InlineData("Message")]
    [InlineData("Nonsense")]
    [InlineData("")]
    public async Task Other_answers_than_the_ready_made_ones_are_not_taken(string kind)
    {
        await _shop.Stranger().Says(_code, kind);

        Assert.Equal((0, 0), (_shop.Records.Events(), _shop.Records.Count("outbox")));
    }

    [Fact]
    public async Task Message_is_passed_on_with_the_way_to_reach_the_finder()
    {
        var sent = await _shop.Stranger().Writes(_code, "Under the bench at court 3.\nI am here until six.", "07700 900123");

        Assert.Equal(HttpStatusCode.Redirect, sent.Status);
        var body = Assert.Single(await _shop.MailsSent());
        Assert.Contains("> Under the bench at court 3.\n> I am here until six.", body, StringComparison.Ordinal);
        Assert.Contains("07700 900123", body, StringComparison.Ordinal);
        Assert.Contains("racket 1 (Pim Ferran)", body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", 0, "Write a message before you send it.")]
    [InlineData("x", 1001, "Shorten the message to 1000 characters; it has 1001.")]
    public async Task Message_that_cannot_be_passed_on_is_shown_again_with_what_to_do(string letter, int times, string error)
    {
        var page = await _shop.Stranger().Writes(_code, string.Concat(Enumerable.Repeat(letter, times)), "me@finder.example");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal([error], page.Errors);
        Assert.Equal("me@finder.example", page.Document.QuerySelector("#reach")!.GetAttribute("value"));
        Assert.Equal(0, _shop.Records.Events());
    }

    [Fact]
    public async Task Message_of_exactly_a_thousand_characters_goes_and_a_way_to_reach_of_101_does_not()
    {
        Assert.Equal(HttpStatusCode.Redirect, (await _shop.Stranger().Writes(_code, new string('x', 1000))).Status);

        var page = await _shop.Stranger().Writes(_code, "Here.", new string('1', 101));

        Assert.Equal(["Shorten this to 100 characters; it has 101."], page.Errors);
        Assert.Equal(1, _shop.Records.Events());
    }

    [Fact]
    public async Task Form_sent_twice_is_one_message_and_one_mail()
    {
        var finder = _shop.Stranger();
        var page = await finder.FoundPage(_code);
        for (var n = 0; n < 3; n++)
            await finder.Send(page, page.Form("/message"), ("Input.Message", "At the desk."));

        Assert.Equal((1, 1), (_shop.Records.Events(), _shop.Records.Count("outbox")));
    }

    [Fact]
    public async Task Fourth_word_of_a_source_within_an_hour_is_not_passed_on_and_the_shop_is_shown()
    {
        var finder = _shop.Stranger();
        foreach (var kind in new[] { "AtDesk", "HaveIt", "StillThere" })
            await finder.Says(_code, kind);

        var page = await finder.Writes(_code, "And one more.", "07700 900123");

        Assert.Equal(3, _shop.Records.Events());
        Assert.Contains("this one was not sent", Assert.Single(page.Errors), StringComparison.Ordinal);
        Assert.Equal("And one more.", page.Document.QuerySelector("#words")!.TextContent);
        Assert.Equal("07700 900123", page.Document.QuerySelector("#reach")!.GetAttribute("value"));
        Assert.Contains("+44 20 7946 0182", page.Main, StringComparison.Ordinal);
        Assert.False(page.HasForm("/answer"));
    }

    [Fact]
    public async Task Ten_words_a_day_are_the_most_for_a_tag()
    {
        for (var n = 1; n <= 10; n++)
            await _shop.Stranger($"198.51.100.{n}").Says(_code);
        await _shop.Stranger("198.51.100.11").Says(_code);
        Assert.Equal(10, _shop.Records.Events());

        _shop.Clock.Advance(TimeSpan.FromHours(25));
        await _shop.Stranger("198.51.100.11").Says(_code);
        Assert.Equal(11, _shop.Records.Events());
    }

    [Theory]
    [InlineData("UPDATE client SET found_choice = 'Shop'")]
    [InlineData("UPDATE tag SET found_blocked_at = '2026-11-25T00:00:00.000Z'")]
    [InlineData("UPDATE tag SET state = 'Retired', retired_at = '2026-11-25T00:00:00.000Z'")]
    public async Task Consent_withdrawn_while_the_message_is_written_passes_nothing_on(string change)
    {
        var finder = _shop.Stranger();
        var page = await finder.FoundPage(_code);
        _shop.Records.Change(change);

        var sent = await finder.Send(page, page.Form("/message"), ("Input.Message", "At the desk."));

        Assert.Contains("could not be passed on", Assert.Single(sent.Errors), StringComparison.Ordinal);
        Assert.Equal("At the desk.", sent.Document.QuerySelector("#words")!.TextContent);
        Assert.Equal((0, 0), (_shop.Records.Events(), _shop.Records.Count("outbox")));
    }

    [Fact]
    public async Task Words_of_finders_and_their_addresses_never_reach_a_log_line_or_a_public_page()
    {
        _shop.Records.Agree("Contact", mail: true);
        await _shop.Stranger("198.51.100.77").Writes(_code, "canaryword", "canary@finder.example");
        await _shop.Stranger("198.51.100.77").AskForContact(_code);
        for (var n = 0; n < 5; n++)
            await _shop.Stranger("198.51.100.77").Says(_code, n % 2 == 0 ? "AtDesk" : "HaveIt");

        foreach (var address in new[] { "/", $"/t/{_code}", $"/t/{_code}/found" })
        {
            var text = Readable.Of((await _shop.Stranger().Open(address)).Text);
            foreach (var canary in new[] { "canaryword", "finder.example", "198.51.100", "0958", "canary.example", "Odalys", "Pim" })
                Assert.DoesNotContain(canary, text, StringComparison.OrdinalIgnoreCase);
        }
        foreach (var canary in new[] { "canary", "finder.example", "198.51.100", "0958", "Odalys", "Pim Ferran" })
            Assert.DoesNotContain(_shop.Log.All, l => l.Contains(canary, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("198.51.100", _shop.Database.Dump(), StringComparison.Ordinal);
    }
}
