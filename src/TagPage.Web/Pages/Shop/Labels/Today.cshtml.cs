using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Labels;
using TagPage.Records.Shop;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>The labels for everything strung today.</summary>
public sealed class TodayModel(LabelStore store, LabelMaker maker, ShopClock clock) : PageModel
{
    public LabelSet Set { get; private set; } = new();

    public void OnGet() => Set = Made(LabelPages.OneEach);

    public IActionResult OnGetPdf(LabelPages pages = LabelPages.OneEach) =>
        Made(pages) is { Labels.Count: > 0 } set ? File(set.Pdf(maker, pages), "application/pdf") : NotFound();

    private LabelSet Made(LabelPages pages) =>
        LabelSet.Of(maker, store.StrungOn(clock.Today).Select(row => new LabelSet.Wanted(row, LabelPurpose.Done)), pages);
}
