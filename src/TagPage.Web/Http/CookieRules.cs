namespace TagPage.Web.Http;

/// <summary>
/// The rules for every cookie of the program. If the shop's address is https, a cookie is tied to exactly that host
/// and never sent unencrypted (the __Host- prefix of RFC 6265bis); on a first try over http it has a plain name.
/// </summary>
public sealed class CookieRules(PublicAddress address)
{
    public bool AlwaysSecure => address is { IsConfigured: true, IsHttps: true };

    public string Name(string name) => AlwaysSecure ? "__Host-" + name : name;

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
