using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Settings.Care;

public sealed class RemoveModel(CareGuideStore store) : PageModel
{
    public CareGuideStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        store.Remove(id);
        this.Say($"{Saved.Title} is taken down.");
        return Redirect("/shop/settings/care");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
