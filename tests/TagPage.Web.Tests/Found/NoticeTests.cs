using TagPage.Core.Tags;
using TagPage.Records.LostAndFound;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Found;

/// <summary>What Odalys is told by email: real SMTP exchanges with a server in this process.</summary>
public sealed class NoticeTests : IAsyncDisposable
{
    private readonly PostOffice _post = PostOffice.Open();
    private readonly TestShop _shop;
    private readonly TagCode _code;

    public NoticeTests()
    {
        _shop = new TestShop
        {
            Settings = { ["TagPage:Smtp:Host"] = "127.0.0.1", ["TagPage:Smtp:Port"] = $"{_post.Port}", ["TagPage:Smtp:Tls"] = "None" },
        };
        _shop.Records.Shop();
        _code = _shop.Records.Family().Tag;
        _shop.Records.Agree("Contact");
    }

    public async ValueTask DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _post.DisposeAsync();
    }

    [Fact]
    public async Task Showing_is_told_at_once_from_the_shop_with_replies_to_the_shop()
    {
        await _shop.Stranger().AskForContact(_code);
        await Send();

        var mail = Assert.Single(_post.Received);
        Assert.Equal("odalys@canary.example", mail.To.Mailboxes.Single().Address);
        Assert.Equal("bench@ferrygate.example", mail.From.Mailboxes.Single().Address);
        Assert.Equal("bench@ferrygate.example", mail.ReplyTo.Mailboxes.Single().Address);
        Assert.Equal("About one of your rackets: your contact details were shown", mail.Subject);
        Assert.Contains("25 Nov 2026, 10:00: your contact details were shown to somebody who opened the page of racket 1 (Pim Ferran).", mail.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain("http", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Notice_is_in_the_clients_language()
    {
        _shop.Records.Change("UPDATE client SET language = 'de'");
        await _shop.Stranger().Says(_code, "HaveIt");
        await Send();

        Assert.Contains("„Ich habe ihn bei mir.“", Assert.Single(_post.Received).TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Owners_own_words_stand_around_what_happened_and_the_cautions_stay()
    {
        _shop.Records.OwnWords("Notice", "Dear {client},\n\n{events}\n\nRuna of {shop}", "News of {client}'s racket");
        await _shop.Stranger().Writes(_code, "Look at http://evil.example and {client}");
        await Send();

        var mail = Assert.Single(_post.Received);
        Assert.Equal("News of Odalys Ferran's racket", mail.Subject);
        Assert.StartsWith("Dear Odalys Ferran,", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("Runa of Ferrygate Racket Bench", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("Do not open links", mail.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain("evil.example", mail.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain("evil.example", mail.HtmlBody, StringComparison.Ordinal);
        Assert.Contains("{client}", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Showings_within_an_hour_are_gathered_into_one_more_mail()
    {
        await _shop.Stranger().AskForContact(_code);
        await Send();
        _shop.Clock.Advance(TimeSpan.FromMinutes(20));
        await _shop.Stranger("198.51.100.1").AskForContact(_code);
        _shop.Clock.Advance(TimeSpan.FromMinutes(20));
        await _shop.Stranger("198.51.100.2").AskForContact(_code);
        await Send();
        Assert.Single(_post.Received);

        _shop.Clock.Advance(TimeSpan.FromMinutes(21));
        await Send();

        Assert.Equal(2, _post.Received.Count);
        var second = _post.Received.Last().TextBody!;
        Assert.Contains("10:20", second, StringComparison.Ordinal);
        Assert.Contains("10:40", second, StringComparison.Ordinal);
        Assert.DoesNotContain("10:00", second, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Words_are_told_at_once_and_bring_along_what_was_being_gathered()
    {
        await _shop.Stranger().AskForContact(_code);
        await Send();
        _shop.Clock.Advance(TimeSpan.FromMinutes(5));
        await _shop.Stranger("198.51.100.1").AskForContact(_code);
        _shop.Clock.Advance(TimeSpan.FromMinutes(5));
        await _shop.Stranger("198.51.100.2").Writes(_code, "I have it at the café.");
        await Send();

        Assert.Equal(2, _post.Received.Count);
        var second = _post.Received.Last().TextBody!;
        Assert.Contains("10:05", second, StringComparison.Ordinal);
        Assert.Contains("> I have it at the café.", second, StringComparison.Ordinal);

        await _shop.Stranger("198.51.100.3").Says(_code);
        await Send();
        Assert.Equal(3, _post.Received.Count);
        Assert.DoesNotContain("café", _post.Received.Last().TextBody!, StringComparison.Ordinal);
        Assert.Contains("> Front desk of the hall", _post.Received.Last().TextBody!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_an_hour_of_quiet_the_next_is_told_at_once_again()
    {
        await _shop.Stranger().AskForContact(_code);
        await Send();
        _shop.Clock.Advance(TimeSpan.FromMinutes(70));
        await _shop.Stranger().Says(_code);
        await Send();

        Assert.Equal(2, _post.Received.Count);
    }

    [Fact]
    public async Task Where_the_client_has_no_mail_the_shop_is_told()
    {
        _shop.Records.Change("UPDATE client SET mail = NULL, language = 'ja'");
        await _shop.Stranger().Writes(_code, "Here.", "me@finder.example");
        await Send();

        var mail = Assert.Single(_post.Received);
        Assert.Equal("bench@ferrygate.example", mail.To.Mailboxes.Single().Address);
        Assert.Contains("Odalys Ferran has no email address on file", mail.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain("/n/", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Links_and_tricks_in_a_message_arrive_dead()
    {
        await _shop.Stranger().Writes(_code, "Pay at https://evil.example/pay or www.evil.example, {answer 1} {link} mail x@evil.example", "y@evil.example");
        await Send();

        var text = Assert.Single(_post.Received).TextBody!;
        Assert.Contains("> Pay at https[:]//evil[.]example/pay or www[.]evil[.]example, {answer 1} {link} mail x[at]evil[.]example", text, StringComparison.Ordinal);
        Assert.Equal(["https://tag.example/n/finder/"], Links(text).Select(l => l[..29]));
    }

    [Fact]
    public async Task After_thirty_days_what_finders_left_is_gone_and_their_links_are_void()
    {
        await _shop.Stranger().Writes(_code, "canaryword", "ilse@finder.example");
        await Send();
        var link = new Uri(Links(_post.Received.Single().TextBody!).Single()).PathAndQuery;
        _shop.Clock.Advance(TimeSpan.FromDays(29));
        await _shop.Stranger().Says(_code);
        _shop.Get<FoundSweeper>().Sweep();
        Assert.Contains("canaryword", _shop.Database.Dump(), StringComparison.Ordinal);

        _shop.Clock.Advance(TimeSpan.FromDays(1.1));
        _shop.Get<FoundSweeper>().Sweep();

        var dump = _shop.Database.Dump();
        foreach (var canary in new[] { "canaryword", "finder.example" })
            Assert.DoesNotContain(canary, dump, StringComparison.Ordinal);
        Assert.Equal(("1", "1"), (_shop.Records.Text("SELECT COUNT(*) FROM found_event WHERE wiped_at IS NOT NULL AND source = ''"), _shop.Records.Text("SELECT COUNT(*) FROM found_event WHERE wiped_at IS NULL AND source <> ''")));
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await _shop.Stranger().Open(link)).Status);
        foreach (var file in Directory.EnumerateFiles(_shop.Folder, "tagpage.db*"))
            Assert.DoesNotContain("canaryword", await Bytes(file), StringComparison.Ordinal);
    }

    private Task Send() => _shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);

    private static IEnumerable<string> Links(string text) =>
        System.Text.RegularExpressions.Regex.Matches(text, @"https?://\S+").Select(m => m.Value);

    private static async Task<string> Bytes(string file)
    {
        await using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var reader = new StreamReader(stream, System.Text.Encoding.Latin1);
        return await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
    }
}
