namespace TagPage.Web.Tests.Cast;

/// <summary>Bram helps at the bench. The owner invites him, and he chooses a password with the link.</summary>
public static class Bram
{
    public const string Name = "Bram";

    public const string Password = "three loose planks humming";

    public const string Mail = "bram@bench.example";

    /// <summary>Where his link leads.</summary>
    public static async Task<string> Invites(this Visitor owner, string name = Name, string mail = "")
    {
        var answer = await owner.Send(await owner.Open("/shop/people/invite"), ("Input.Name", name), ("Input.Mail", mail));
        return LinkOn(answer);
    }

    public static string LinkOn(WebPage page) => new Uri(page.Document.QuerySelector("#link-text")?.TextContent ?? throw new InvalidOperationException(page.Main)).AbsolutePath;

    public static async Task<WebPage> Accept(this Visitor visitor, string link, string password = Password) =>
        await visitor.Send(await visitor.Open(link), ("Input.NewPassword", password));

    /// <summary>His browser, signed in with the link.</summary>
    public static async Task<Visitor> BramAtBench(this TestShop shop, string mail = "")
    {
        var bram = shop.Stranger();
        await bram.Accept(await shop.Owner().Invites(mail: mail));
        return bram;
    }

    /// <summary>Where his page is, as the owner sees him in the list.</summary>
    public static async Task<string> PageOf(this Visitor owner, string name = Name) =>
        (await owner.Open("/shop/people")).Document.QuerySelectorAll("main a.whole").Single(a => a.TextContent.Contains(name, StringComparison.Ordinal)).GetAttribute("href")!;
}
