using System.Text.RegularExpressions;

namespace TagPage.Web.Tests.Cast;

/// <summary>Clients read the code in their email and type it.</summary>
public static partial class Codes
{
    /// <summary>Asks for a code, reads it in the email and types it; for ten minutes the visitor can then do what could do harm.</summary>
    public static async Task<WebPage> ProvesToBe(this Visitor client, TestShop shop, string next = "/my")
    {
        var code = await client.AsksForCode(shop, next);
        return await client.Types(code, next);
    }

    public static async Task<string> AsksForCode(this Visitor client, TestShop shop, string next = "/my")
    {
        await client.Send(await client.Open($"/my/code?next={next}"));
        var mails = await shop.MailsSent();
        return mails.SelectMany(m => Six().Matches(m)).Last().Groups[1].Value;
    }

    public static async Task<WebPage> Types(this Visitor client, string code, string next = "/my")
    {
        var page = await client.Open($"/my/code?next={next}&sent=true");
        return await client.Send(page, (AngleSharp.Html.Dom.IHtmlFormElement)page.Document.QuerySelector("#type")!, ("Input.Digits", code));
    }

    [GeneratedRegex(@"code is (\d{6})\n")]
    private static partial Regex Six();
}
