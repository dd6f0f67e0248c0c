using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Tags;

/// <summary>Closes a live tag's found page, or opens it again.</summary>
public sealed class FindersModel(TagStore store) : PageModel
{
    public TagStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(string code) => Load(code) ? Page() : NotFound();

    public IActionResult OnPost(string code, bool block)
    {
        if (!Load(code) || store.BlockFinders(Who.Shop, Saved.Code, block) is Outcome.Absent)
            return NotFound();
        this.Say(block ? $"Tag {Saved.Code.Display} gives finders only the shop’s contact details." : $"Tag {Saved.Code.Display} is open to finders again.");
        return Redirect($"/shop/rackets/{Saved.RacketId}#tag");
    }

    private bool Load(string code)
    {
        if (TagCode.Read(code).Code is not { } tag || store.Get(tag) is not { State: TagState.Live } row)
            return false;
        Saved = row;
        return true;
    }
}
