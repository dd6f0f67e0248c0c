using Dapper;
using Microsoft.Playwright;
using MimeKit;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Mail;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Browser.Tests;

/// <summary>A client's own page, on phones without JavaScript, each journey in two languages.</summary>
public sealed class OwnPageTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Theory]
    [InlineData("en", 5)]
    [InlineData("es", 6)]
    public async Task Link_opens_the_page_a_restring_is_asked_for_and_waits_at_the_bench(string code, long client)
    {
        var (language, say) = (Languages.Of(code)!, OwnPageWords.Of(Languages.Of(code)!));
        await using var guardian = await Enter(client, code);
        await guardian.Reads(say.Home.Heading);
        await guardian.FitsTheScreen();
        var racket = OneToString(client);
        await guardian.Go($"/my/rackets/{racket}?lang={code}");
        await guardian.Follow(say.Racket.Order);

        await Assertions.Expect(guardian.Page.GetByLabel(language.Phrases.Reminder.Strings)).Not.ToBeVisibleAsync();
        await guardian.Page.GetByLabel(language.Phrases.Reminder.Different, new() { Exact = true }).CheckAsync();
        await guardian.Page.GetByLabel(language.Phrases.Reminder.Strings).FillAsync("softer ones " + code);
        await guardian.Press(say.Order.Send);

        await guardian.Reads(say.Order.Sent);
        await guardian.Reads(say.Racket.JobExpected);
        await using var runa = await Journey.Phone(stage, javaScript: false);
        await runa.SignIn();
        await Assertions.Expect(runa.Page.Locator(".job", new() { HasText = "softer ones " + code })).ToContainTextAsync("asked for on their own page");
    }

    [Theory]
    [InlineData("en", 7)]
    [InlineData("es", 8)]
    public async Task Racket_is_marked_lost_its_contact_agreed_to_with_a_code_and_taken_back(string code, long client)
    {
        var say = OwnPageWords.Of(Languages.Of(code)!);
        await using var guardian = await Enter(client, code);
        var racket = OneToString(client);
        await guardian.Go($"/my/rackets/{racket}?lang={code}");
        await guardian.Follow(say.Lost.Button);
        await guardian.Press(say.Lost.Send);
        await guardian.Reads(say.Lost.Saved);

        await guardian.Go($"/my/found/choose?lang={code}");
        await guardian.Page.Locator("main form button").First.ClickAsync();
        await guardian.Page.GetByLabel(say.Code.Label).FillAsync(await CodeOf(client));
        await guardian.Press(say.Code.Go);
        await guardian.Page.GetByLabel(say.Lost.GetsMessage, new() { Exact = true }).CheckAsync();
        await guardian.Press(say.Lost.SaveChoice);
        await guardian.Reads(say.Lost.ChoiceSaved);
        await guardian.Press(say.Lost.WithdrawMessage);

        await guardian.Reads(say.Lost.Withdrawn);
    }

    [Fact]
    public async Task Own_pages_pass_axe_and_fit_a_phone()
    {
        await using var guardian = await Enter(2, "en", javaScript: true);
        var racket = OneToString(2);
        stage.Get<Database>().Write(c => c.Execute("UPDATE own_page_session SET fresh_until = '2999-01-01T00:00:00.000Z'"));
        foreach (var address in new[]
        {
            "/my", $"/my/rackets/{racket}", $"/my/order/{racket}", $"/my/lost/{racket}", $"/my/pass-on/{racket}", $"/my/what-if/{racket}?times=4&hours=1", $"/my/reading/{racket}", "/my/found", "/my/found/choose", "/my/details", "/my/contact",
            "/my/reminders", "/my/export", "/my/forget", "/my/code?sent=true", "/my/sign-out", "/my/link", "/my/out", "/my/1-nothing", "/my?lang=es", "/my/details?lang=es",
        })
        {
            await guardian.Go(address);
            await guardian.FitsTheScreen();
            await guardian.HasNoAxeViolation();
        }
    }

    [Fact]
    public async Task Owners_pages_about_them_pass_axe_and_fit_a_phone()
    {
        await using var runa = await Journey.Phone(stage);
        await runa.SignIn();
        await runa.Go("/shop/corner/3");
        await runa.Press("Make a private link");
        foreach (var address in new[] { new Uri(runa.Page.Url).AbsolutePath, "/shop/corner/3", "/shop/help/own-page", "/shop/nudges/batch", "/shop/settings/messages" })
        {
            await runa.Go(address);
            await runa.FitsTheScreen();
            await runa.HasNoAxeViolation();
        }
    }

    private async Task<Journey> Enter(long client, string code, bool javaScript = false)
    {
        var links = stage.Get<OwnPageLinkStore>();
        var link = links.Get(Assert.IsType<Outcome.Done>(links.Make(Who.Shop, client)).Id)!;
        var journey = await Journey.Phone(stage, javaScript);
        await journey.Go(new Uri(stage.Get<OwnPageMails>().Address(link)).PathAndQuery + "?lang=" + code);
        await journey.Press(OwnPageWords.Of(Languages.Of(code)!).Link.EnterButton);
        return journey;
    }

    /// <summary>A racket of the client's that was strung here and has no job at the bench.</summary>
    private long OneToString(long client) => stage.Get<Database>().Read(c => c.QueryFirst<long>("""
        SELECT r.id
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN bed b ON b.racket_id = r.id
        WHERE p.client_id = @client AND r.state IN ('InTurn', 'Spare') AND r.id NOT IN (SELECT racket_id FROM job WHERE state IN ('Waiting', 'OnMachine', 'Strung'))
        ORDER BY r.id
        """, new { client }));

    /// <summary>The six digits of the newest code that went to a client.</summary>
    private async Task<string> CodeOf(long client)
    {
        await stage.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);
        var id = stage.Get<Database>().Read(c => c.QueryFirst<string>("SELECT message_id FROM outbox WHERE kind = 'OwnPageCode' AND to_client_id = @client ORDER BY id DESC", new { client }));
        var mail = await MimeMessage.LoadAsync(stage.Get<MailFiles>().PathOf(id), TestContext.Current.CancellationToken);
        return System.Text.RegularExpressions.Regex.Match(mail.TextBody!, @"\b\d{6}\b").Value;
    }
}
