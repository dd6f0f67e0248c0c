using TagPage.Web.Start;

namespace TagPage.Web.Http;

/// <summary>
/// The address the world reaches this shop at: that of the setting, else the one chosen in the browser, else the one this
/// machine listens on. Links are built from it and never from a request's Host header. Asked anew each time, because the
/// owner may choose another while the program runs.
/// </summary>
/// <param name="configured">What the setting says.</param>
/// <param name="chosen">What was chosen in the browser; null while nothing was.</param>
public sealed class PublicAddress(ConfiguredAddress configured, Func<string?> chosen)
{
    private string _listening = App.DefaultAddress;

    /// <summary>False while no address is set and the one this machine listens on is used instead.</summary>
    public bool IsConfigured => (configured.Base ?? chosen()) is not null;

    /// <summary>A setting names it, and only a start can change it.</summary>
    public bool IsFixed => configured.Base is not null;

    /// <summary>No other machine can reach it: nobody set one, or what they set is a name of this machine for itself.</summary>
    public bool IsOnlyHere => !IsConfigured || IsLoopback(Base);

    /// <summary>Whether an address leads every machine to itself.</summary>
    public static bool IsLoopback(string address) => new Uri(address).IsLoopback;

    public bool IsHttps => Base.StartsWith("https:", StringComparison.Ordinal);

    /// <summary>Without a trailing slash.</summary>
    public string Base => configured.Base ?? chosen() ?? _listening;

    /// <param name="path">Begins with a slash.</param>
    public string Of(string path) => Base + path;

    /// <summary>If no address is set, the one the server listens on is used once it is known.</summary>
    public void UseListening(string address) => _listening = AddressText.Read(address) ?? throw new ArgumentException(address, nameof(address));
}
