using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.Shop.Bench;

public sealed class DueModel(DueStore store, ShopStore shops) : PageModel
{
    private const int HouseholdsAPage = 40;

    /// <summary>Show those too who have not been seen for long.</summary>
    [BindProperty(SupportsGet = true, Name = "unseen")]
    public bool WithUnseen { get; set; }

    [BindProperty(SupportsGet = true, Name = "page-number")]
    public int PageNumber { get; set; } = 1;

    public ShopDetails Shop => shops.Get();

    public DueList Due { get; private set; } = new([], 0, 0);

    public int Pages => Math.Max(1, (Due.Households.Count + HouseholdsAPage - 1) / HouseholdsAPage);

    public IEnumerable<Household> Shown => Due.Households.Skip((PageNumber - 1) * HouseholdsAPage).Take(HouseholdsAPage);

    public void OnGet()
    {
        Due = store.List(WithUnseen);
        PageNumber = Math.Clamp(PageNumber, 1, Pages);
    }
}
