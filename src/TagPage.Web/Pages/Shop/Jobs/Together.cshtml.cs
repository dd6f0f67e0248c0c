using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>All that is at the shop of a household or of a payer's clients, and what can be done about it in one go.</summary>
public sealed class TogetherModel(TogetherStore together, FrameStore frames, ShopStore shops) : TogetherPage(together)
{
    public ShopDetails Shop => shops.Get();

    public int Untold => Saved.Ready.Count(job => job.ToldReadyAt is null);

    /// <summary>Still to be paid for what is ready; without those that have no price.</summary>
    public long OpenMinor => Saved.Ready.Where(job => job.PaidOn is null).Sum(job => job.OpenMinor ?? 0);

    public void OnGet() => ViewData["Frames"] = frames.Catalogue();
}
