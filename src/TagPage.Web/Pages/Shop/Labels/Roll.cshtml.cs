using Microsoft.AspNetCore.Mvc;
using TagPage.Labels.Layout;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;
using TagPage.Web.Http.Forms;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>One roll: how far it is, and once it is made, its file.</summary>
public sealed class RollModel(RollStore rolls, LabelMaker maker) : KeyPage<RollStore.Row>("token")
{
    public string Path => rolls.Path(Saved);

    /// <summary>The first label, once there is one.</summary>
    public LaidLabel? First { get; private set; }

    protected override RollStore.Row? Find(string key) => rolls.Of(key);

    public void OnGet()
    {
        First = rolls.Codes(Saved.Id) is [var first, ..] ? maker.Blank(first, StockOf(LabelPages.OneEach)) : null;
        if (!Saved.IsReady)
            Response.Headers["Refresh"] = "1";
    }

    public IActionResult OnGetPdf(LabelPages pages = LabelPages.OneEach)
    {
        if (!Saved.IsReady || rolls.Codes(Saved.Id) is not { Count: > 0 } codes)
            return NotFound();
        var stock = StockOf(pages);
        return File(LabelPdf.Of(LabelMaker.Pages(codes.Select(code => maker.Blank(code, stock)), pages, Saved.Settings.Sheet())), "application/pdf");
    }

    private LabelStock StockOf(LabelPages pages) =>
        pages == LabelPages.Sheet ? Saved.Settings.OnSheet(Saved.Settings.Stock()) : Saved.Settings.Stock();
}
