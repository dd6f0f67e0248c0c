using TagPage.Records.Storage;
using TagPage.Web.Start;

namespace TagPage.Web.Http;

/// <summary>
/// The address the world reaches this shop at (setting TagPage:Address). Links are built from it and never from a
/// request's Host header.
/// </summary>
public sealed class PublicAddress
{
    private Uri _base;

    /// <exception cref="CannotStartException">The setting is not an absolute http or https address without path.</exception>
    public PublicAddress(IConfiguration configuration)
    {
        IsConfigured = !string.IsNullOrWhiteSpace(configuration["TagPage:Address"]);
        _base = Read(IsConfigured ? configuration["TagPage:Address"]! : App.DefaultAddress);
    }

    /// <summary>False while no address is set and the one this machine listens on is used instead.</summary>
    public bool IsConfigured { get; }

    public bool IsHttps => _base.Scheme == Uri.UriSchemeHttps;

    /// <summary>Without a trailing slash.</summary>
    public string Base => _base.GetLeftPart(UriPartial.Authority);

    /// <param name="path">Begins with a slash.</param>
    public string Of(string path) => Base + path;

    /// <summary>If no address is configured, the one the server listens on is used once it is known.</summary>
    public void UseListening(string address)
    {
        if (!IsConfigured)
            _base = Read(address);
    }

    private static Uri Read(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https" && uri is { AbsolutePath: "/", Query: "" }
            ? uri
            : throw new CannotStartException($"TagPage:Address is “{text}”; write it as https://tag.example, without a path.");
}
