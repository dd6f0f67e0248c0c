using System.Net;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Pim's racket is lost: what Odalys does about it in her own page, and what a finder gets from that.</summary>
public sealed class OwnPageLostTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _racket;
    private TagCode _tag;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _, _racket, _tag, _) = _shop.Records.Family();
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Lost_racket_says_so_on_its_tag_page_until_it_is_back()
    {
        await _phone.Send(await _phone.Open($"/my/lost/{_racket}"), ("Input.Since", "2026-11-24"), ("Input.Note", "Left at court 3, thank you!"));
        var tag = (await _shop.Stranger().Open($"/t/{_tag}")).Main;
        Assert.Contains("marked as lost", tag, StringComparison.Ordinal);
        Assert.Contains("Left at court 3", tag, StringComparison.Ordinal);

        var page = await _phone.Open($"/my/rackets/{_racket}");
        Assert.Contains("Lost since 24 Nov 2026", page.Document.QuerySelector("main section")!.TextContent, StringComparison.Ordinal);
        await _phone.Send(page, page.Form("?handler=Back"));

        Assert.DoesNotContain("marked as lost", (await _shop.Stranger().Open($"/t/{_tag}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lost_and_found_marks_a_racket_lost_and_back()
    {
        var page = await _phone.Open("/my/found");
        await _phone.Send(await _phone.Open(page.Document.QuerySelector($"main a[href='/my/lost/{_racket}']")!.GetAttribute("href")!));
        page = await _phone.Open("/my/found");
        Assert.Contains("Lost since 25 Nov 2026", page.Main, StringComparison.Ordinal);
        Assert.Null(page.Document.QuerySelector($"main a.button[href='/my/lost/{_racket}']"));

        var lost = await _phone.Open($"/my/lost/{_racket}");
        Assert.NotNull(lost.Document.QuerySelector($"main form[action='/my/rackets/{_racket}?handler=Back'] button.primary"));
        Assert.DoesNotContain("Mark it as lost", lost.Main, StringComparison.Ordinal);

        var answer = await _phone.Send(page, page.Form("/my/found?handler=Back"));

        Assert.Equal("/my/found", answer.Location);
        Assert.Equal(0, _shop.Records.Count("racket", "lost_since IS NOT NULL"));
        Assert.Contains("no longer marked as lost", (await _phone.Open("/my/found")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_of_another_household_is_not_taken_back_in_lost_and_found()
    {
        var teo = await _shop.OnOwnPage(_shop.Records.Client("Teo Brandt"));
        _shop.Records.Change("UPDATE racket SET lost_since = '2026-11-20'");
        var (mine, his) = (await _phone.Open("/my/found"), await teo.Open("/my/sign-out"));
        var before = _shop.Database.Dump();

        var answer = await teo.Send(his, mine.Form("/my/found?handler=Back"), ("__RequestVerificationToken", his.Document.QuerySelector("[name=__RequestVerificationToken]")!.GetAttribute("value")!));

        Assert.Equal(HttpStatusCode.NotFound, answer.Status);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Theory]
    [InlineData("Message", "Stop messages from finders")]
    [InlineData("Contact", "Stop showing my contact details, and stop messages")]
    public async Task Taking_it_back_says_what_it_stops_and_is_not_what_one_is_led_to_press(string choice, string words)
    {
        _shop.Records.Agree(choice);

        var page = await _phone.Open("/my/found");

        var button = page.Form("/my/found?handler=Withdraw").QuerySelector("button")!;
        Assert.Equal(words, button.TextContent);
        Assert.DoesNotContain("primary", button.ClassList);
        Assert.Contains("This applies to all your rackets.", page.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Pim waits for it", "leave out the name")]
    [InlineData("call 020 7946 0958", "leave out the number")]
    [InlineData("mail odalys@canary.example", "leave out the @")]
    [InlineData("see racket.example", "leave out the link")]
    public async Task Note_that_tells_too_much_is_refused_with_what_to_do_and_kept(string note, string said)
    {
        var answer = await _phone.Send(await _phone.Open($"/my/lost/{_racket}"), ("Input.Note", note));

        Assert.Contains(said, Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal(note, answer.Document.QuerySelector("#Input_Note")!.GetAttribute("value"));
        Assert.Equal(1, _shop.Records.Count("racket", "lost_since IS NULL"));
    }

    [Theory]
    [InlineData("2026-11-26", "last seen")]
    [InlineData("2020-01-01", "more than a year ago")]
    [InlineData("yesterday", "last seen")]
    public async Task Day_that_cannot_be_is_refused(string since, string said)
    {
        var answer = await _phone.Send(await _phone.Open($"/my/lost/{_racket}"), ("Input.Since", since));

        Assert.Contains(said, Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("racket", "lost_since IS NULL"));
    }

    [Fact]
    public async Task Contact_is_shown_to_finders_once_she_chose_that_with_a_code_and_she_is_told()
    {
        _shop.Records.Change("UPDATE racket SET lost_since = '2026-11-24'");
        await _phone.ProvesToBe(_shop);

        await _phone.Send(await _phone.Open("/my/found/choose"), ("Input.Choice", "Contact"));

        Assert.Contains("+44 20 7946 0958", (await _shop.Stranger().AskForContact(_tag)).Main, StringComparison.Ordinal);
        Assert.Contains(await _shop.MailsSent(), m => m.Contains("gets: your contact details", StringComparison.Ordinal));
        Assert.Equal("2026-11-25", _shop.Records.Text("SELECT found_choice_on FROM client"));
        Assert.Contains("your contact details", (await _phone.Open("/my/found")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Press_after_the_codes_ten_minutes_changes_nothing_and_keeps_what_was_chosen()
    {
        await _phone.ProvesToBe(_shop);
        var page = await _phone.Open("/my/found/choose");
        _shop.Clock.Advance(TimeSpan.FromMinutes(11));

        var answer = await _phone.Send(page, ("Input.Choice", "Contact"));

        Assert.Contains("Your code expired", answer.Main, StringComparison.Ordinal);
        Assert.NotNull(answer.Document.QuerySelector("[value=Contact][checked]"));
        Assert.Equal("Shop", _shop.Records.Text("SELECT found_choice FROM client"));
    }

    [Fact]
    public async Task Taking_it_back_needs_no_code_and_works_for_pages_that_are_already_open()
    {
        _shop.Records.Agree("Contact");
        var finder = _shop.Stranger();
        var open = await finder.FoundPage(_tag);
        var page = await _phone.Open("/my/found");

        await _phone.Send(page, page.Form("/my/found?handler=Withdraw"));

        Assert.DoesNotContain("7946 0958", (await finder.PressContact(open)).Text, StringComparison.Ordinal);
        Assert.Equal("Shop|2026-11-25", _shop.Records.Text("SELECT found_choice || '|' || found_choice_on FROM client"));
        Assert.Equal(0, _shop.Records.Events());
    }

    [Fact]
    public async Task Without_a_number_there_is_nothing_to_show_and_that_is_said()
    {
        _shop.Records.Change("UPDATE client SET phone = NULL");
        await _phone.ProvesToBe(_shop);

        var answer = await _phone.Send(await _phone.Open("/my/found/choose"), ("Input.Choice", "Contact"));

        Assert.Contains("nothing to show", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal("Shop", _shop.Records.Text("SELECT found_choice FROM client"));
    }

    [Fact]
    public async Task Each_showing_and_message_stands_there_with_its_time_and_no_link_of_a_finder_can_be_pressed()
    {
        _shop.Records.Agree("Contact");
        var finder = _shop.Stranger();
        await finder.AskForContact(_tag);
        await finder.Writes(_tag, "See http://evil.example/ now", "ilse@finder.example");

        var page = await _phone.Open("/my/found");

        Assert.Contains("25 Nov 2026, 10:00, Pim Ferran, racket 1: contact details shown", System.Text.RegularExpressions.Regex.Replace(page.Main, @"\s+", " "), StringComparison.Ordinal);
        Assert.Contains("http[:]//evil[.]example", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Document.QuerySelectorAll("a"), a => a.GetAttribute("href")!.Contains("evil", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Finder_is_answered_once_from_the_shop_without_her_own_address()
    {
        _shop.Records.Agree("Message");
        await _shop.Stranger().Writes(_tag, "I have it.", "ilse@finder.example");
        var log = await _phone.Open("/my/found");
        var link = log.Document.QuerySelectorAll("main a").Single(a => a.GetAttribute("href")!.StartsWith("/my/finder/", StringComparison.Ordinal)).GetAttribute("href")!;
        var form = await _phone.Open(link);

        await _phone.Send(form, ("Input.Text", "Thank you! Saturday at the shop?"));
        var again = await _phone.Send(form, ("Input.Text", "And again"));

        Assert.Equal(HttpStatusCode.NotFound, again.Status);
        Assert.Equal(1, _shop.Records.Count("outbox", "kind = 'FinderAnswer'"));
        await _shop.MailsSent();
        var files = Directory.GetFiles(Path.Combine(_shop.Folder, "mail")).Select(File.ReadAllText).Single(m => m.Contains("To: ilse@finder.example", StringComparison.Ordinal));
        Assert.Contains("Saturday at the shop", files, StringComparison.Ordinal);
        Assert.DoesNotContain(OnFile.CanaryMail, files, StringComparison.Ordinal);
        Assert.DoesNotContain("Odalys", files, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_without_words_is_not_sent()
    {
        _shop.Records.Agree("Message");
        await _shop.Stranger().Writes(_tag, "I have it.", "ilse@finder.example");
        var id = _shop.Records.Text("SELECT id FROM found_event");

        var answer = await _phone.Send(await _phone.Open($"/my/finder/{id}"), ("Input.Text", " "));

        Assert.NotEmpty(answer.Errors);
        Assert.Equal(0, _shop.Records.Count("outbox", "kind = 'FinderAnswer'"));
    }
}
