using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Settings.Care;

public sealed class EditModel(CareGuideStore store) : PageModel
{
    [BindProperty]
    public CareGuideInput Input { get; set; } = new();

    /// <summary>Only preview the guide; nothing is saved.</summary>
    [BindProperty]
    public bool Preview { get; set; }

    public IHtmlContent? Previewed { get; private set; }

    public CareGuideStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new CareGuideInput
        {
            Version = Saved.Version,
            Name = Saved.Name,
            Title = Saved.Title,
            ForMaterial = Saved.ForMaterial,
            Markdown = Saved.Markdown,
        };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        if (Preview)
        {
            Previewed = OwnersMarkdown.Render(Input.Markdown!);
            return Page();
        }
        switch (store.Change(id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused, Saved.Version);
        }
        this.Say($"{Input.Title} is saved.", "See it", $"/care/{Input.Name}");
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
