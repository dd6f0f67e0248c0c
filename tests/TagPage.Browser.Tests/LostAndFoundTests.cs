using System.Diagnostics;
using Dapper;
using Microsoft.Playwright;
using MimeKit;
using TagPage.Core.Text;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Browser.Tests;

/// <summary>A racket's way home, on phones without JavaScript, each journey in two languages.</summary>
[Long]
public sealed partial class LostAndFoundTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Theory]
    [InlineData("de", 5)]
    [InlineData("es", 6)]
    public async Task Lost_racket_shows_its_contact_after_two_taps_and_the_guardian_hears_of_it(string language, long client)
    {
        var say = Languages.Of(language)!.Phrases;
        var (racket, code, phone) = RacketOf(client);
        await Agree(client, "contact details shown while lost, and messages");
        await Lose(racket, "Bench 2");

        await using var finder = await Journey.Phone(stage, javaScript: false, locale: language);
        await finder.Go("/t/" + code);
        await finder.IsOnTheFirstScreen(finder.Page.GetByRole(AriaRole.Link, new() { Name = say.Tag.FoundButton }));
        await finder.Follow(say.Tag.FoundButton);
        await finder.IsOnTheFirstScreen(finder.Page.GetByRole(AriaRole.Button, new() { Name = say.Found.ShowContact }));
        await finder.Press(say.Found.ShowContact);

        var call = finder.Page.GetByRole(AriaRole.Link, new() { Name = say.Found.Call.Fill(("phone", Phones.Shown(phone))) });
        await finder.IsOnTheFirstScreen(call);
        Assert.Equal(Phones.CallUri(phone), await call.GetAttributeAsync("href"));
        await finder.FitsTheScreen();
        var mail = Assert.Single(await MailsTo(client));
        Assert.Equal(say.Notice.SubjectShown, mail.Subject);
    }

    [Theory]
    [InlineData("fr", 12)]
    [InlineData("it", 13)]
    public async Task Message_is_passed_on_and_answered_without_either_side_seeing_an_address(string language, long client)
    {
        var say = Languages.Of(language)!.Phrases;
        var reach = $"ilse-{language}@finder.example";
        await Agree(client, "messages passed on");

        await using var finder = await Journey.Phone(stage, javaScript: false, locale: language);
        await finder.Go("/t/" + RacketOf(client).Code);
        await finder.Follow(say.Tag.FoundButton);
        await finder.Fill(say.Found.MessageLabel, "Sous le banc.");
        await finder.Fill(say.Found.ReachLabel, reach);
        await finder.Press(say.Found.Send);
        await finder.Reads(say.Found.SentMessage);

        var notice = Assert.Single(await MailsTo(client)).TextBody!;
        Assert.Contains("> Sous le banc.", notice, StringComparison.Ordinal);
        await using var guardian = await Journey.Phone(stage, javaScript: false, locale: language);
        await guardian.Go(AnswerLink().Match(notice).Value);
        await guardian.FitsTheScreen();
        await guardian.Fill(say.Answer.Label, "À demain, dix heures.");
        await guardian.Press(say.Answer.Send);
        await guardian.Reads(say.Answer.SentHeading);

        var answer = Assert.Single(await Mails(m => m.To.Mailboxes.Any(b => b.Address == reach)));
        Assert.Contains("À demain, dix heures.", answer.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain(Reach(client).Mail, answer.ToString(), StringComparison.Ordinal);
    }

    private async Task Agree(long client, string choice)
    {
        await using var runa = await Journey.Phone(stage, javaScript: false);
        await runa.SignIn();
        await runa.Go($"/shop/clients/{client}");
        await runa.Follow("Change what finders get");
        await runa.Page.GetByLabel(choice, new() { Exact = true }).CheckAsync();
        await runa.Press("Save");
        await runa.Reads("is saved");
    }

    private async Task Lose(long racket, string note)
    {
        await using var runa = await Journey.Phone(stage, javaScript: false);
        await runa.SignIn();
        await runa.Go($"/shop/rackets/{racket}");
        await runa.Follow("Mark it as lost");
        await runa.Fill("Note for everybody", note);
        await runa.Press("Mark it as lost");
        await runa.Reads("Lost since");
    }

    private (long Id, string Code, string Phone) RacketOf(long client) => stage.Get<Database>().Read(c => c.QueryFirst<(long, string, string)>("""
        SELECT r.id, t.code, c.phone
        FROM racket r JOIN player p ON p.id = r.player_id JOIN client c ON c.id = p.client_id JOIN tag t ON t.racket_id = r.id AND t.state = 'Live'
        WHERE c.id = @client ORDER BY r.id
        """, new { client }));

    private (string Mail, string Phone) Reach(long client) => stage.Get<Database>().Read(c => c.QueryFirst<(string, string)>("SELECT mail, phone FROM client WHERE id = @client", new { client }));

    private Task<IReadOnlyList<MimeMessage>> MailsTo(long client) => Mails(m => m.To.Mailboxes.Any(b => b.Address == Reach(client).Mail));

    /// <summary>Without a mail server the program writes its mails as files; the program itself may be writing one right now.</summary>
    private async Task<IReadOnlyList<MimeMessage>> Mails(Func<MimeMessage, bool> which)
    {
        var (stop, found) = (TestContext.Current.CancellationToken, new List<MimeMessage>());
        for (var waited = Stopwatch.StartNew(); found.Count == 0 && waited.Elapsed < TimeSpan.FromMinutes(1);)
        {
            await stage.Get<MailSender>().SendAll(stop);
            foreach (var file in Directory.EnumerateFiles(stage.Get<DataFolder>().Mail, "*.eml"))
                if (await MimeMessage.LoadAsync(file, stop) is var mail && which(mail))
                    found.Add(mail);
        }
        return found;
    }

    [System.Text.RegularExpressions.GeneratedRegex(@"/n/finder/\S+")]
    private static partial System.Text.RegularExpressions.Regex AnswerLink();
}
