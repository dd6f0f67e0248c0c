using TagPage.Web.Mail;
using TagPage.Web.Pages.My;

namespace TagPage.Web.Tests.Cast;

/// <summary>Clients come into their corner the way everybody does: private link, button.</summary>
public static class Corners
{
    /// <summary>A new private link to a client's corner, as a path.</summary>
    public static string CornerLink(this TestShop shop, long client) => shop.CornerPath(shop.Get<CornerLinkStore>().Make(client)!.Value);

    public static string CornerPath(this TestShop shop, long link) =>
        "/my/" + shop.Get<LinkKeys>().Token(LinkPurpose.Corner, link, shop.Get<CornerLinkStore>().Get(link)!.Secret);

    /// <summary>The client's phone, signed in with a link of its own.</summary>
    public static async Task<Visitor> InCorner(this TestShop shop, long client) => await shop.Stranger().Enters(shop.CornerLink(client));

    public static async Task<Visitor> Enters(this Visitor visitor, string link)
    {
        var answer = await visitor.Send(await visitor.Open(link));
        Assert.Equal("/my", answer.Location);
        return visitor;
    }

    public static async Task<bool> IsInCorner(this Visitor visitor) => (await visitor.Get("/my")).StatusCode == System.Net.HttpStatusCode.OK;

    /// <summary>Everything that waits in the outbox goes out, into files.</summary>
    public static async Task<IReadOnlyList<string>> MailsSent(this TestShop shop)
    {
        await shop.Get<MailRoom>().SendAll(TestContext.Current.CancellationToken);
        var mails = new List<string>();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(shop.Folder, "mail"), "*.eml").OrderBy(File.GetLastWriteTimeUtc))
            mails.Add((await MimeKit.MimeMessage.LoadAsync(file, TestContext.Current.CancellationToken)).TextBody!.ReplaceLineEndings("\n"));
        return mails;
    }
}
