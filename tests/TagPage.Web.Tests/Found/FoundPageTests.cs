using System.Net;
using System.Text.RegularExpressions;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Found;

/// <summary>What a finder is offered, as Odalys chose.</summary>
public sealed partial class FoundPageTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _code;
    private readonly long _racket;

    public FoundPageTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _code, _) = _shop.Records.Family();
    }

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("Shop", true, false, false, false)]
    [InlineData("Message", false, false, false, true)]
    [InlineData("Message", true, false, false, true)]
    [InlineData("Contact", false, false, false, true)]
    [InlineData("Contact", true, false, true, true)]
    [InlineData("Contact", false, true, true, true)]
    public async Task Page_offers_what_was_agreed_to_and_no_more(string choice, bool lost, bool always, bool contact, bool words)
    {
        _shop.Records.Agree(choice, lost, always);

        var page = await _shop.Stranger().FoundPage(_code);

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal((contact, words, words), (page.HasForm("/contact"), page.HasForm("/answer"), page.HasForm("/message")));
        Assert.Contains("+44 20 7946 0182", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Contact_without_any_number_or_mail_to_show_is_not_offered()
    {
        _shop.Records.Change("UPDATE client SET phone = NULL");
        _shop.Records.Agree("Contact");
        Assert.False((await _shop.Stranger().FoundPage(_code)).HasForm("/contact"));

        _shop.Records.Change("UPDATE client SET found_shows_mail = 1");
        Assert.True((await _shop.Stranger().FoundPage(_code)).HasForm("/contact"));
    }

    [Fact]
    public async Task Retired_blank_unknown_blocked_and_not_agreed_tags_answer_byte_for_byte_alike()
    {
        var tags = new List<TagCode> { _code, _shop.Records.RetiredTag(_racket), _shop.Records.BlankTag(), TagCode.Draw(System.Security.Cryptography.RandomNumberGenerator.Fill) };
        var blocked = _shop.Records.LiveTag(_shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Ula", "+442079460111"), "Ula")));
        _shop.Records.Change("UPDATE client SET found_choice = 'Contact', found_always = 1 WHERE name = 'Ula'");
        _shop.Records.Change("UPDATE tag SET found_blocked_at = '2026-11-24T00:00:00.000Z' WHERE code = @blocked", new { blocked });
        _shop.Records.Change("UPDATE racket SET lost_since = '2026-11-20', lost_note = 'Left at court 3'");
        tags.Add(blocked);

        var answers = new List<string>();
        foreach (var tag in tags)
        {
            var page = await _shop.Stranger().FoundPage(tag);
            Assert.False(page.Response.Headers.Contains("Set-Cookie"));
            answers.Add($"{page.Status} {Headers(page)} {page.Text.Replace(tag.ToString(), "CODE", StringComparison.Ordinal)}");
        }

        Assert.Single(answers.Distinct());
        Assert.DoesNotContain("<form", answers[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Unknown_codes_count_as_guesses_here_as_well()
    {
        for (var n = 0; n < TagPage.Web.Http.Limits.WrongCodes.MostOfASource; n++)
            Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().FoundPage(TagCode.Draw(System.Security.Cryptography.RandomNumberGenerator.Fill))).Status);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await _shop.Stranger().FoundPage(_code)).Status);
        Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger("198.51.100.3").FoundPage(_code)).Status);
    }

    [Fact]
    public async Task Address_that_holds_no_code_is_not_found() =>
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Open("/t/ABC/found")).Status);

    [Fact]
    public async Task Looking_fifty_times_changes_nothing_shows_no_contact_and_gives_no_session()
    {
        _shop.Records.Agree("Contact", mail: true);
        var before = _shop.Database.Dump();
        foreach (var below in new[] { "", "/contact", "/answer", "/message" })
            for (var n = 0; n < 50; n++)
                foreach (var method in new[] { HttpMethod.Get, HttpMethod.Head })
                {
                    using var request = new HttpRequestMessage(method, $"/t/{_code}/found{below}");
                    var answer = await _shop.Stranger().Client.SendAsync(request, TestContext.Current.CancellationToken);
                    Assert.Equal(below.Length == 0 ? HttpStatusCode.OK : HttpStatusCode.Redirect, answer.StatusCode);
                    Assert.DoesNotContain("7946 0958", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
                    Assert.DoesNotContain(answer.Headers.TryGetValues("Set-Cookie", out var cookies) ? cookies : [], c => !c.Contains("form", StringComparison.Ordinal));
                }

        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Tag_page_leads_here_and_says_when_the_racket_is_lost()
    {
        var usual = await _shop.Stranger().Open("/t/" + _code);
        Assert.Contains("Found this racket?", usual.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("lost", usual.Main, StringComparison.OrdinalIgnoreCase);
        Assert.NotNull(usual.Document.QuerySelector($"main a[href='/t/{_code}/found']"));

        _shop.Records.Agree("Message");
        var lost = await _shop.Stranger().Open($"/t/{_code}?lang=de");

        Assert.Contains("Dieser Schläger wird vermisst", lost.Main, StringComparison.Ordinal);
        Assert.Contains("Left at court 3, thank you!", lost.Main, StringComparison.Ordinal);
        Assert.NotNull(lost.Document.QuerySelector($"main a.primary[href='/t/{_code}/found?lang=de']"));
    }

    [Fact]
    public async Task Chosen_language_stays_through_every_form_and_answer()
    {
        _shop.Records.Agree("Contact");
        var finder = _shop.Stranger();

        var page = await finder.FoundPage(_code, "?lang=it");
        Assert.All(page.Document.QuerySelectorAll("main form").Select(f => f.GetAttribute("action")!), a => Assert.Contains("?lang=it", a, StringComparison.Ordinal));
        var sent = await finder.Send(page, page.Form("/answer"), ("says", "HaveIt"));

        Assert.Equal($"/t/{_code}/found?lang=it#thanks", sent.Location);
        Assert.Contains("La sua risposta viene inviata", (await finder.Open(sent.Location!)).Main, StringComparison.Ordinal);
        Assert.DoesNotContain("La sua risposta viene inviata", (await finder.Open(sent.Location!)).Main, StringComparison.Ordinal);
    }

    private static string Headers(WebPage page) =>
        Date().Replace(page.Response.Headers.ToString() + page.Response.Content.Headers, "");

    [GeneratedRegex("(Date|Content-Length): [^\n]*\n")]
    private static partial Regex Date();
}
