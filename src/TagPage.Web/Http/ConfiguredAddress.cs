using TagPage.Records.Storage;

namespace TagPage.Web.Http;

/// <summary>The address that the setting TagPage:Address names. It holds from the start to the end of the program and overrules the one chosen in the browser.</summary>
public sealed class ConfiguredAddress
{
    public const string Setting = "TagPage:Address";

    /// <exception cref="CannotStartException">The setting is not an absolute http or https address without path.</exception>
    public ConfiguredAddress(IConfiguration configuration)
    {
        var text = configuration[Setting];
        if (!string.IsNullOrWhiteSpace(text))
            Base = AddressText.Read(text.Trim()) ?? throw new CannotStartException($"{Setting} is “{text}”; write it as https://tag.example, without a path.");
    }

    /// <summary>Without a trailing slash; null without the setting.</summary>
    public string? Base { get; }
}
