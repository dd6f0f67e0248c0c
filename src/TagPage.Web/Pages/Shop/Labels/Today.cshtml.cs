using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Layout;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;
using TagPage.Records.Shop;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>The labels for everything strung today, each in its racket's own colours.</summary>
public sealed class TodayModel(LabelStore store, LabelMaker maker, ShopClock clock) : PageModel
{
    public IReadOnlyList<(LabelRow Row, LaidLabel Label)> Labels { get; private set; } = [];

    public IActionResult OnGet(string? file, LabelPages pages = LabelPages.OneEach)
    {
        if (file is not (null or "labels.pdf"))
            return NotFound();
        Labels = [.. store.StrungOn(clock.Today).Select(row => (row, maker.Make(row, EntryOf(row, pages)).Label!))];
        if (file is null)
            return Page();
        return Labels.Count > 0 ? File(LabelPdf.Of(maker.Pages(Labels.Select(pair => pair.Label), pages)), "application/pdf") : NotFound();
    }

    private static LabelEntry EntryOf(LabelRow row, LabelPages pages) => new()
    {
        TapeColour = row.TapeColour,
        InkColour = row.LabelInk,
        OwnLine = row.LabelLine,
        AgreedName = row.LabelName,
        Pages = pages,
    };
}
