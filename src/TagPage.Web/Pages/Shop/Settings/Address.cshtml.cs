using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Hosting;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class AddressModel(PublicAddress address) : PageModel
{
    public PublicAddress Address => address;

    /// <summary>What a label carries, with an example in place of a code.</summary>
    public string OnLabels => address.Of("/t/7K2M9Q4TXAV").ToUpperInvariant();
}
