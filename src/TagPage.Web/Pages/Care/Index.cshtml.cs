using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Care;

public sealed class IndexModel(CareStore store) : PageModel
{
    public CareStore.Guide Guide { get; private set; } = new();

    public IActionResult OnGet(string name)
    {
        if (store.Get(name) is not { } guide)
            return NotFound();
        Guide = guide;
        return Page();
    }
}
