using System.Security.Cryptography;
using TagPage.Records.Accounts;
using TagPage.Records.Storage;

namespace TagPage.Web.Http.SignIn;

/// <summary>The cookie of a browser that the owner marked as shared. By itself it opens nothing: it only lets PINs be tried there.</summary>
public sealed class SharedTablet(TabletStore tablets, CookieRules cookies)
{
    private const string Cookie = "tablet";

    private static readonly TimeSpan Lifetime = TimeSpan.FromDays(400);

    /// <summary>Null for every other browser.</summary>
    public TabletRow? Of(HttpContext context) => IsMarked(context) ? tablets.Find(context.Request.Cookies[cookies.Name(Cookie)]) : null;

    /// <summary>Whether it says so itself; only <see cref="Of"/> knows.</summary>
    public bool IsMarked(HttpContext context) => cookies.IsSent(context.Request, Cookie);

    public Outcome Share(HttpContext context, Who who, string name)
    {
        var secret = RandomNumberGenerator.GetHexString(48, lowercase: true);
        var shared = tablets.Share(who, name, secret);
        if (shared is Outcome.Done)
            cookies.Give(context, Cookie, secret, Lifetime);
        return shared;
    }
}
