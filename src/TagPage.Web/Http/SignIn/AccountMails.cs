using System.Globalization;
using TagPage.Records.Accounts;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Http.SignIn;

/// <summary>What the shop and its helpers are told about signing in.</summary>
public sealed class AccountMails(ShopStore shops, ShopClock clock, PublicAddress address)
{
    /// <summary>A browser signed in that had not done so before.</summary>
    public (string Subject, MailText Body) NewDevice(string account, SignInWay way, string browser) => ("A new browser signed in",
        MailText.Fill("""
            Somebody signed in to {shop} as {account}, by {way}, in a browser that had not signed in before.

            When: {when}
            The browser calls itself: {browser}

            If this was you, there is nothing to do. If not, sign out all other browsers and change the password at once:
            {link}
            """,
            ("shop", shops.Get().Name), ("account", account), ("way", MailText.Words(EnglishNames.Of(way))), ("when", MailText.Words(Now)),
            ("browser", browser.Length > 0 ? browser : "nothing"), ("link", MailText.Words(address.Of("/account/security")))));

    /// <summary>To a helper, who chooses a password by it.</summary>
    public WrittenMail Invitation(string name, long id) => new($"Your sign-in at {shops.Get().Name}",
        MailText.Fill("""
            {shop} has made a sign-in for you, {name}. Choose your password here:
            {link}

            The link works once, for three days. If you do not expect this email, do nothing.
            """,
            ("shop", shops.Get().Name), ("name", name), ("link", MailText.Link(LinkPurpose.Invitation, id))));

    private string Now
    {
        get
        {
            var now = clock.OnTheWall(clock.Now);
            return $"{Formats.Day(DateOnly.FromDateTime(now.DateTime))}, {now.ToString("HH:mm", CultureInfo.InvariantCulture)}";
        }
    }
}
