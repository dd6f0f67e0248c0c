namespace TagPage.Web.Http;

/// <summary>
/// The rules for every cookie of the program. If the setting of the shop's address is https, a cookie is tied to exactly
/// that host and never sent unencrypted (the __Host- prefix of RFC 6265bis); on a first try over http it has a plain name.
/// An address chosen in the browser does not change them: names of cookies hold as long as the program runs, and an owner
/// who chose an address that does not work yet must get back to the page where it is chosen.
/// </summary>
public sealed class CookieRules(ConfiguredAddress configured)
{
    /// <summary>The cookie that forms are guarded with.</summary>
    public const string Form = "form";

    /// <summary>Of the shop's sessions.</summary>
    public const string Shop = "owner";

    /// <summary>Of clients' sessions.</summary>
    public const string OwnPage = "corner";

    /// <summary>Of helpers' tablets at an event.</summary>
    public const string Desk = "desk";

    public bool AlwaysSecure { get; } = configured.Base?.StartsWith("https:", StringComparison.Ordinal) == true;

    public string Name(string name) => AlwaysSecure ? "__Host-" + name : name;

    /// <summary>
    /// Whether a browser sends this cookie; what it is worth is seen when somebody is signed in by it. Most send none at all,
    /// so that there is nothing to take apart.
    /// </summary>
    public bool IsSent(HttpRequest request, string name) => request.Headers.Cookie.Count > 0 && request.Cookies.ContainsKey(Name(name));

    public void Give(HttpContext context, string name, string value, TimeSpan age) =>
        context.Response.Cookies.Append(Name(name), value, Options(context, age));

    public void TakeBack(HttpContext context, string name) => context.Response.Cookies.Delete(Name(name), Options(context, null));

    private CookieOptions Options(HttpContext context, TimeSpan? age) => new()
    {
        HttpOnly = true,
        IsEssential = true,
        MaxAge = age,
        Path = "/",
        SameSite = SameSiteMode.Lax,
        Secure = AlwaysSecure || context.Request.IsHttps,
    };

    public void Apply(CookieBuilder cookie, string name)
    {
        cookie.Name = Name(name);
        cookie.HttpOnly = true;
        cookie.IsEssential = true;
        cookie.Path = "/";
        cookie.SameSite = SameSiteMode.Lax;
        cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
    }
}
