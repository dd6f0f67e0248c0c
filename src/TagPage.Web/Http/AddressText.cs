namespace TagPage.Web.Http;

/// <summary>A web address as people type it and as links and labels carry it.</summary>
public static class AddressText
{
    public const int Longest = 300;

    /// <summary>Scheme, host and port without a trailing slash; null for anything but an absolute http or https address without more.</summary>
    public static string? Read(string? typed) =>
        typed is { Length: <= Longest } && Uri.TryCreate(typed, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https"
        && uri is { AbsolutePath: "/", Query: "", Fragment: "", UserInfo: "", Host.Length: > 0 }
            ? $"{uri.Scheme}://{Host(uri)}{(uri.IsDefaultPort ? "" : $":{uri.Port}")}"
            : null;

    /// <summary>In the letters that every browser and every square of a tag understands.</summary>
    private static string Host(Uri uri) => uri.HostNameType == UriHostNameType.IPv6 ? uri.Host : uri.IdnHost;
}
