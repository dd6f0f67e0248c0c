using TagPage.Core.Tags;
using TagPage.Labels;
using TagPage.Web.Http;

namespace TagPage.Web.Labels;

/// <summary>The QR of a tag's public address.</summary>
public static class TagSquare
{
    /// <summary>Null where the shop's address holds characters that the dense mode of a QR does not have.</summary>
    public static TagQr? Of(PublicAddress address, TagCode code) => Of(address.Base, code);

    /// <param name="address">Without a trailing slash.</param>
    /// <param name="code">Of the tag.</param>
    public static TagQr? Of(string address, TagCode code)
    {
        try
        {
            return TagQr.Of($"{address}/t/{code}");
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Why a label should not be printed yet, or null if there is no reason not to.</summary>
    public static string? Warning(PublicAddress address) => (address.IsOnlyHere, address.IsHttps) switch
    {
        (true, _) => $"Do not print this yet: it leads to {address.Base}, which only this machine knows. Labels outlive a change of address; set it under Settings → Web address first.",
        (_, false) => $"{address.Base} is not https. Labels outlive a change of address; settle it before you print.",
        _ => null,
    };
}
