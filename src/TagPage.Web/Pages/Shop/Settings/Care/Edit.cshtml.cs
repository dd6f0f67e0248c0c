using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Settings.Care;

public sealed class EditModel(CareGuideStore store) : RecordPage<CareGuideStore.Row>
{
    [BindProperty]
    public CareGuideInput Input { get; set; } = new();

    /// <summary>Only preview the guide; nothing is saved.</summary>
    [BindProperty]
    public bool Preview { get; set; }

    public IHtmlContent? Previewed { get; private set; }

    protected override CareGuideStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new CareGuideInput
    {
        Version = Saved.Version,
        Name = Saved.Name,
        Title = Saved.Title,
        ForMaterial = Saved.ForMaterial,
        Markdown = Saved.Markdown,
    };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (Preview)
        {
            Previewed = OwnersMarkdown.Render(Input.Markdown!);
            return Page();
        }
        return this.After(store.Change(User.AtShop(), Id, Input.ToEntry()),
            _ => this.GoOn("/shop/settings/care", $"{Input.Title} is saved.", "See it", $"/care/{Input.Name}"), Saved.Version);
    }
}
