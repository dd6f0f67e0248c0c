using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Layout;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;
using TagPage.Records.Shop;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>The labels for everything strung today, each on its racket's own tape.</summary>
public sealed class TodayModel(LabelStore store, LabelMaker maker, ShopClock clock) : PageModel
{
    public IReadOnlyList<(LabelRow Row, LaidLabel Label)> Labels { get; private set; } = [];

    /// <summary>What cannot be printed the way it is kept with its racket, and why.</summary>
    public IReadOnlyList<(LabelRow Row, string Why)> Unprinted { get; private set; } = [];

    public void OnGet() => Make(LabelPages.OneEach);

    public IActionResult OnGetPdf(LabelPages pages = LabelPages.OneEach)
    {
        Make(pages);
        return Labels.Count > 0 ? File(LabelPdf.Of(maker.Pages(Labels.Select(pair => pair.Label), pages)), "application/pdf") : NotFound();
    }

    private void Make(LabelPages pages)
    {
        var made = store.StrungOn(clock.Today).Select(row => (Row: row, Made: maker.Make(row, EntryOf(row, pages)))).ToList();
        Labels = [.. made.Where(one => one.Made.Label is not null).Select(one => (one.Row, one.Made.Label!))];
        Unprinted = [.. made.Where(one => one.Made.Label is null).Select(one => (one.Row, one.Made.Why!))];
    }

    private static LabelEntry EntryOf(LabelRow row, LabelPages pages) => new()
    {
        TapeColour = row.LabelTape,
        InkColour = row.LabelInk,
        OwnLine = row.LabelLine,
        AgreedName = row.LabelName,
        Pages = pages,
    };
}
