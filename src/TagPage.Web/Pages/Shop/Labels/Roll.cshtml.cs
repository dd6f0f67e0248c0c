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

    public IActionResult OnGet(string token)
    {
        if (!Load(token))
            return NotFound();
        First = rolls.Codes(Roll.Id) is [var first, ..] ? maker.Blank(first, StockOf(LabelPages.OneEach)) : null;
        if (!Roll.IsReady)
            Response.Headers["Refresh"] = "1";
        return Page();
    }

    public IActionResult OnGetPdf(string token, LabelPages pages = LabelPages.OneEach)
    {
        if (!Load(token) || !Roll.IsReady || rolls.Codes(Roll.Id) is not { Count: > 0 } codes)
            return NotFound();
        var stock = StockOf(pages);
        return File(LabelPdf.Of(LabelMaker.Pages(codes.Select(code => maker.Blank(code, stock)), pages, Roll.Settings.Sheet())), "application/pdf");
    }

    private bool Load(string token)
    {
        if (rolls.Of(token) is not { } roll)
            return false;
        Roll = roll;
        return true;
    }

    private LabelStock StockOf(LabelPages pages) =>
        pages == LabelPages.Sheet ? Roll.Settings.OnSheet(Roll.Settings.Stock()) : Roll.Settings.Stock();
}
