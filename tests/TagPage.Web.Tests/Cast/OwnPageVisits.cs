using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Mail;

namespace TagPage.Web.Tests.Cast;

/// <summary>Clients come into their own page the way everybody does: private link, button.</summary>
public static class OwnPageVisits
{
    /// <summary>A new private link to a client's own page, as a path.</summary>
    public static string OwnPageLink(this TestShop shop, long client) => shop.OwnPagePath(shop.MakesOwnPageLink(client));

    public static long MakesOwnPageLink(this TestShop shop, long client) =>
        Assert.IsType<Outcome.Done>(shop.Get<OwnPageLinkStore>().Make(Who.Shop, client)).Id;

    public static string OwnPagePath(this TestShop shop, long link) =>
        "/my/" + shop.Get<LinkTokens>().Token(LinkPurpose.OwnPage, link, shop.Get<OwnPageLinkStore>().Get(link)!.Secret);

    /// <summary>The client's phone, signed in with a link of its own.</summary>
    public static async Task<Visitor> OnOwnPage(this TestShop shop, long client) => await shop.Stranger().Enters(shop.OwnPageLink(client));

    public static async Task<Visitor> Enters(this Visitor visitor, string link)
    {
        var answer = await visitor.Send(await visitor.Open(link));
        Assert.Equal("/my", answer.Location);
        return visitor;
    }

    public static async Task<bool> IsOnOwnPage(this Visitor visitor) => (await visitor.Get("/my")).StatusCode == System.Net.HttpStatusCode.OK;

    /// <summary>Everything waiting in the outbox is sent, into files.</summary>
    public static async Task<IReadOnlyList<string>> MailsSent(this TestShop shop)
    {
        await shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);
        var mails = new List<string>();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(shop.Folder, "mail"), "*.eml").OrderBy(File.GetLastWriteTimeUtc))
            mails.Add((await MimeKit.MimeMessage.LoadAsync(file, TestContext.Current.CancellationToken)).TextBody!.ReplaceLineEndings("\n"));
        return mails;
    }
}
