using System.Net;
using TagPage.Core.Tags;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Found;

/// <summary>The one answer a guardian may give a finder, by a link in the notice: real SMTP exchanges with a server in this process.</summary>
public sealed class GuardianAnswerTests : IAsyncDisposable
{
    private readonly PostOffice _post = PostOffice.Open();
    private readonly TestShop _shop;
    private readonly TagCode _code;

    public GuardianAnswerTests()
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
    public async Task Guardian_answers_once_and_the_finder_gets_it_from_the_shop()
    {
        var finder = _shop.Stranger();
        var found = await finder.FoundPage(_code, "?lang=fr");
        await finder.Send(found, found.Form("/message"), ("Input.Message", "Je l’ai."), ("Input.Reach", "ilse@finder.example"));
        await Send();
        var link = new Uri(Links(_post.Received.Single().TextBody!).Single()).PathAndQuery;
        var guardian = _shop.Stranger("198.51.100.50");

        var page = await guardian.Open(link);
        Assert.Contains("Je l’ai.", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("ilse@finder.example", page.Text, StringComparison.Ordinal);
        for (var n = 0; n < 2; n++)
            Assert.Equal(HttpStatusCode.Redirect, (await guardian.Send(page, ("Text", "Thank you! Tomorrow at ten?"))).Status);
        await Send();

        Assert.Equal(2, _post.Received.Count);
        var mail = _post.Received.Last();
        Assert.Equal("ilse@finder.example", mail.To.Mailboxes.Single().Address);
        Assert.Equal("bench@ferrygate.example", mail.ReplyTo.Mailboxes.Single().Address);
        Assert.Contains("Thank you! Tomorrow at ten?", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("La personne qui s’occupe de la raquette", mail.TextBody, StringComparison.Ordinal);
        foreach (var canary in new[] { "Odalys", "Ferran", "Pim", "canary", "0958" })
            Assert.DoesNotContain(canary, mail.ToString(), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Your answer is on its way", (await guardian.Open(link)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_link_looked_at_fifty_times_changes_nothing_and_a_forged_one_is_not_there()
    {
        await _shop.Stranger().Writes(_code, "Here.", "ilse@finder.example");
        await Send();
        var link = new Uri(Links(_post.Received.Single().TextBody!).Single()).PathAndQuery;
        var before = _shop.Database.Dump();

        for (var n = 0; n < 50; n++)
            foreach (var method in new[] { HttpMethod.Get, HttpMethod.Head })
            {
                using var request = new HttpRequestMessage(method, link);
                Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().Client.SendAsync(request, TestContext.Current.CancellationToken)).StatusCode);
            }
        foreach (var forged in new[] { link[..^1] + (link[^1] == 'A' ? 'B' : 'A'), "/n/finder/1-", "/n/finder/1", "/n/finder/2" + link[11..], _shop.Get<MailWriter>().ReminderLink(1, _shop.Records.Text("SELECT secret FROM found_event"))["https://tag.example/n/".Length..].Insert(0, "/n/finder/") })
            Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Open(forged)).Status);

        Assert.Equal(before, _shop.Database.Dump());
        var token = link["/n/finder/".Length..];
        Assert.DoesNotContain(token, before, StringComparison.Ordinal);
        Assert.DoesNotContain(_shop.Log.All, l => l.Contains(token, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("07700 900123")]
    [InlineData("")]
    public async Task Without_a_mail_address_of_the_finder_there_is_no_answer_link(string reach)
    {
        await _shop.Stranger().Writes(_code, "Here.", reach);
        await Send();

        Assert.Empty(Links(Assert.Single(_post.Received).TextBody!));
    }

    [Fact]
    public async Task Link_is_built_from_the_shops_address_even_where_the_finder_forged_the_host()
    {
        var finder = _shop.Stranger();
        finder.Client.DefaultRequestHeaders.Host = "evil.example";
        await finder.Writes(_code, "Here.", "ilse@finder.example");
        await Send();

        Assert.All(Links(_post.Received.Single().TextBody!), l => Assert.StartsWith("https://tag.example/", l, StringComparison.Ordinal));
    }

    private Task Send() => _shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);

    private static IEnumerable<string> Links(string text) =>
        System.Text.RegularExpressions.Regex.Matches(text, @"https?://\S+").Select(m => m.Value);
}
