using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using Dapper;
using TagPage.Records.Clients;
using TagPage.Records.Jobs;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Reminders;

namespace TagPage.Web.Tests.Mail;

/// <summary>Has every email and SMS of one household written, and lists the links they hold.</summary>
internal sealed partial class LinksOfMails(TestShop shop, Household household)
{
    /// <summary>Ids of what this round's links may open, by the path before them.</summary>
    private readonly Dictionary<string, long> _own = [];

    private long Job => long.Parse(shop.Records.Text("SELECT CAST(id AS TEXT) FROM job"), System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>One line per text: what it is, and its links in order, each with "own" in place of what it opens.</summary>
    public async Task<IReadOnlyList<string>> Of(string typed)
    {
        Clean();
        Type(typed);
        List<string> texts = [.. Reminder(), .. OwnPage()];
        Notices(typed);
        await shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);
        return [.. texts.Select(t => "SMS: " + Bare(t)), .. await Mails()];
    }

    private void Clean() => shop.Records.Change("""
        UPDATE found_event SET notice_id = NULL; DELETE FROM outbox; DELETE FROM found_event; DELETE FROM own_page_code; DELETE FROM reminder;
        UPDATE job SET state = 'Strung', collected_on = NULL, told_ready_at = NULL;
        """);

    private void Type(string typed)
    {
        shop.Records.Change("UPDATE client SET name = @typed, mail = 'odalys@canary.example', found_choice = 'Message'; UPDATE player SET name = @typed", new { typed });
        shop.Records.Change("UPDATE shop SET name = @typed, opening_hours = @typed", new { typed });
    }

    private IEnumerable<string> Reminder()
    {
        shop.Records.Change("UPDATE job SET state = 'Collected', collected_on = strung_on");
        var id = _own["/n/"] = _own["/n/stop/"] = shop.Records.Reminder(household.Client, household.Racket);
        var texts = shop.Get<ReminderMails>().Of(shop.Get<ReminderListStore>().Get(id)!);
        Assert.IsType<Outcome.Done>(shop.Get<SendReminderStore>().Mail(Who.Shop, id, texts.Subject, texts.Queued));
        return [texts.Sms, texts.Mail];
    }

    private IEnumerable<string> OwnPage()
    {
        shop.Records.Change("UPDATE job SET state = 'Strung', collected_on = NULL");
        var links = shop.Get<OwnPageLinkStore>();
        var link = _own["/my/"] = shop.MakesOwnPageLink(household.Client);
        Assert.IsType<Outcome.Done>(links.Mail(Who.Shop, link));
        Assert.IsType<Outcome.Done>(shop.Get<ReadyStore>().Tell(Who.Shop, Job));
        Assert.IsType<Outcome.Done>(shop.Get<OwnPageCodeStore>().Send(Who.Client(household.Client)));
        shop.Database.Write(c =>
        {
            var (mails, client) = (shop.Get<IOwnPageMails>(), household.Client);
            var to = Addressee.Of(c, client);
            var received = shop.Get<IJobMails>().Received(JobStore.Get(c, Who.Shop, Job)!);
            foreach (var mail in new[] { received, mails.FoundChoiceChanged(to, FoundChoice.Message), mails.ContactChanged(to), mails.Forgetting(to, new(2026, 12, 1)) })
                shop.Get<OutboxStore>().Queue(c, new NewMail(MailKind.ClientNotice, client, mail.Subject, mail.Body));
        });
        return [shop.Get<OwnPageMails>().LinkSms(links.Get(link)!), shop.Get<JobMails>().Ready([shop.Get<JobStore>().Get(Who.Shop, Job)!]).Sms];
    }

    private void Notices(string typed)
    {
        Press(typed, "ilse@finder.example");
        var id = _own["/n/finder/"] = shop.Database.Read(c => c.ExecuteScalar<long>("SELECT MAX(id) FROM found_event"));
        Press(typed + "!", typed);
        var replies = shop.Get<FinderReplyStore>();
        Assert.IsType<Outcome.Done>(replies.Send(Who.Client(household.Client), replies.Get(id)!, typed));
        shop.Records.Change("UPDATE client SET mail = NULL");
        Press(typed + "?", typed);
        shop.Records.Change("UPDATE client SET mail = 'odalys@canary.example'");
        shop.Records.Change("UPDATE outbox SET not_before = made_at");
    }

    private void Press(string message, string reach) => Assert.Contains(shop.Get<FoundEventStore>().Take(
        new FinderPress(TagPage.Core.Tags.TagCode.Parse(household.Tag), FoundKind.Message, FormKey.New(), FormKey.New(), shop.Clock.GetUtcNow()) { Message = message, Contact = reach }).Result, (FoundResult[])[FoundResult.Done, FoundResult.ByShop]);

    private async Task<IReadOnlyList<string>> Mails()
    {
        var lines = new List<string>();
        foreach (var (kind, id) in shop.Database.Read(c => c.Query<(string, string)>("SELECT kind, message_id FROM outbox WHERE state = 'Sent' ORDER BY id").ToList()))
        {
            var mail = await MimeKit.MimeMessage.LoadAsync(Path.Combine(shop.Folder, "mail", id + ".eml"), TestContext.Current.CancellationToken);
            var links = new HtmlParser().ParseDocument(mail.HtmlBody!).QuerySelectorAll("[href], [src]").Select(e => e.GetAttribute("href") ?? e.GetAttribute("src"));
            lines.Add($"{kind}: {Bare(mail.TextBody!)} | {string.Join(' ', links.Select(l => Own(l!)))} | {Own(mail.Headers["List-Unsubscribe"] ?? "")}");
        }
        return lines;
    }

    /// <summary>What an email program turns into a link in plain text.</summary>
    private string Bare(string text) => string.Join(' ', BareLink().Matches(text).Select(m => Own(m.Value)));

    private string Own(string link) => Token().Replace(link, m =>
        _own.TryGetValue(m.Groups[1].Value, out var id) && m.Groups[2].Value == $"{id}" ? m.Groups[1].Value + "own" : "somebody else's " + m.Value);

    [GeneratedRegex(@"(https?://|\bwww\.)\S+", RegexOptions.IgnoreCase)]
    private static partial Regex BareLink();

    [GeneratedRegex(@"(?<=tag\.example)(/n/|/n/stop/|/n/finder/|/my/)(\d+)-[\w-]{22}")]
    private static partial Regex Token();
}
