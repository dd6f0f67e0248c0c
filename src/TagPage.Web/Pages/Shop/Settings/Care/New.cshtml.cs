using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Settings.Care;

public sealed class NewModel(CareGuideStore store) : PageModel
{
    [BindProperty]
    public CareGuideInput Input { get; set; } = new();

    /// <summary>Only preview the guide; nothing is saved.</summary>
    [BindProperty]
    public bool Preview { get; set; }

    public IHtmlContent? Previewed { get; private set; }

    public void OnGet() => Input = new CareGuideInput { FormKey = FormKey.New() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (Preview)
        {
            Previewed = OwnersMarkdown.Render(Input.Markdown!);
            return Page();
        }
        return this.After(store.Add(User.AtShop(), Input.ToEntry()),
            _ => this.GoOn("/shop/settings/care", $"{Input.Title} is open to everybody.", "See it", $"/care/{Input.Name}"));
    }
}
