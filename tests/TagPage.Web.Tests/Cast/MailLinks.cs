using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace TagPage.Web.Tests.Cast;

/// <summary>The private links in emails, as paths.</summary>
public static partial class MailLinks
{
    public static IEnumerable<string> In(string mail) => Links().Matches(mail).Select(l => l.Groups[1].Value);

    /// <summary>A client with email gets a private link, a reminder about a racket, and a finder's words about it; all of it is sent.</summary>
    public static async Task<IReadOnlyList<string>> LinksInMails(this TestShop shop, long client)
    {
        var (records, runa) = (shop.Records, shop.Owner());
        var racket = records.Racket(records.Player(client, "Nell"));
        var tag = records.LiveTag(racket);
        records.Job(racket, strungOn: new(2026, 9, 1), paidOn: new(2026, 9, 1));
        records.Agree("Contact");
        var link = await runa.Open((await runa.Send(await runa.Open($"/shop/corner/{client}"))).Location!);
        await runa.Send(link, link.Document.QuerySelector<IHtmlFormElement>("main form[action$='?handler=Mail']")!);
        await runa.Send(await runa.Open($"/shop/nudges/mail/{records.Reminder(client, racket)}"));
        await shop.Stranger().Writes(tag, "I have it.", "ilse@finder.example");
        var links = (await shop.MailsSent()).SelectMany(In).ToList();
        foreach (var mail in Directory.GetFiles(Path.Combine(shop.Folder, "mail")))
            File.Delete(mail);
        return links;
    }

    [GeneratedRegex(@"https://tag\.example(/(?:my|n)/[A-Za-z0-9_/-]+)")]
    private static partial Regex Links();
}
