using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Tags;

public sealed class RetireModel(TagStore store) : PageModel
{
    public TagStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(string code)
    {
        if (!Load(code))
            return NotFound();
        return Saved.State == TagState.Live ? Page() : Redirect($"/shop/rackets/{Saved.RacketId}#tag");
    }

    public IActionResult OnPost(string code)
    {
        if (!Load(code) || store.Retire(Who.Shop, Saved.Code) is Outcome.Absent)
            return NotFound();
        this.Say($"Tag {Saved.Code.Display} is retired.");
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
