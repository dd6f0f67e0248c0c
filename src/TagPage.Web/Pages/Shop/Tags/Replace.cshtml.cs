using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Tags;

public sealed class ReplaceModel(TagStore store) : PageModel
{
    [BindProperty]
    public string FormKey { get; set; } = "";

    public TagStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(string code)
    {
        if (!Load(code))
            return NotFound();
        if (Saved.State != TagState.Live)
            return Redirect($"/shop/rackets/{Saved.RacketId}#tag");
        FormKey = Records.Storage.FormKey.New();
        return Page();
    }

    public IActionResult OnPost(string code)
    {
        if (!Load(code))
            return NotFound();
        if (store.Replace(Who.Shop, Saved.Code, FormKey ?? "") is Outcome.Refused refused)
            return this.Refuse(refused);
        this.Say($"Tag {Saved.Code.Display} is retired and a new one is live. Print its square and stick it on.");
        return Redirect($"/shop/rackets/{Saved.RacketId}#tag");
    }

    private bool Load(string code)
    {
        if (TagCode.Read(code).Code is not { } tag || store.Get(tag) is not { RacketId: not null } row)
            return false;
        Saved = row;
        return true;
    }
}
