using System.Text;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Labels;
using TagPage.Records.Tags;
using TagPage.Web.Http;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Tags;

/// <summary>A tag's QR as a file, for a label made elsewhere. Retired tags have none.</summary>
public sealed class QrModel(TagStore store, PublicAddress address) : PageModel
{
    private const int MostDots = 20;

    public IActionResult OnGet(string code, string format, int dots = 8)
    {
        if (TagCode.Read(code).Code is not { } tag || store.Get(tag) is not { State: not TagState.Retired } || TagSquare.Of(address, tag) is not { } qr)
            return NotFound();
        return format == "svg"
            ? File(Encoding.UTF8.GetBytes(qr.ToSvg($"QR code of tag {tag.Display}")), "image/svg+xml")
            : File(qr.ToPng(Math.Clamp(dots, 1, MostDots)), "image/png");
    }
}
