using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>A browser that knew the password and still owes a code. Its cookie opens the page that asks for the code, and nothing else.</summary>
public sealed class HalfWay(SealedNotes notes, CookieRules cookies, AccountStore accounts)
{
    private const string Cookie = "half";

    private const string Purpose = "password known";

    private static readonly TimeSpan Lifetime = TimeSpan.FromMinutes(10);

    public void Begin(HttpContext context, Account account) =>
        cookies.Give(context, Cookie, notes.Write(Purpose, account.Id, account.SecurityStamp), Lifetime);

    /// <summary>Whose password it knew; null where that is too long ago, or the password has changed since.</summary>
    public Account? Of(HttpContext context) =>
        notes.Read(Purpose, context.Request.Cookies[cookies.Name(Cookie)], Lifetime) is [var id, var stamp]
        && accounts.Get(id) is { TwoFactor: true } account && account.SecurityStamp == stamp ? account : null;

    public void End(HttpContext context) => cookies.TakeBack(context, Cookie);
}
