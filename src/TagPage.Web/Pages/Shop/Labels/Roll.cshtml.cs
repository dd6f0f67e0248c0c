using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Layout;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>One roll: how far it is, and once it is made, its file.</summary>
public sealed class RollModel(RollStore rolls, LabelMaker maker) : PageModel
{
    public RollStore.Row Roll { get; private set; } = new();

    public string Path => rolls.Path(Roll);

    /// <summary>The first label, once there is one.</summary>
    public LaidLabel? First { get; private set; }

    public IActionResult OnGet(string token, string? file, LabelPages pages = LabelPages.OneEach)
    {
        if (file is not (null or "roll.pdf") || rolls.Of(token) is not { } roll)
            return NotFound();
        Roll = roll;
        var codes = rolls.Codes(roll.Id);
        var stock = StockOf(roll, pages);
        if (file is null)
        {
            First = codes.Count > 0 ? maker.Blank(codes[0], stock) : null;
            if (!roll.IsReady)
                Response.Headers["Refresh"] = "1";
            return Page();
        }
        if (!roll.IsReady || codes.Count == 0)
            return NotFound();
        var labels = codes.Select(code => maker.Blank(code, stock));
        return File(LabelPdf.Of(LabelMaker.Pages(labels, pages, roll.Settings.Sheet())), "application/pdf");
    }

    private static LabelStock StockOf(RollStore.Row roll, LabelPages pages) =>
        pages == LabelPages.Sheet ? roll.Settings.OnSheet(roll.Settings.Stock()) : roll.Settings.Stock();
}
