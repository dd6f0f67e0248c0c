using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.My;

/// <summary>A lost racket is back.</summary>
public sealed class BackModel(ClientOnFileStore clients, MyRacketStore rackets, MyLostStore store) : CornerModel(clients)
{
    public IActionResult OnGet(long id) => rackets.Get(Me.Id, id) is null ? NotFound() : Redirect(Link($"/my/rackets/{id}"));

    public IActionResult OnPost(long id)
    {
        if (store.Back(Me.Id, id) is Outcome.Absent)
            return NotFound();
        this.Say(Say.Lost.IsBack);
        return Redirect(Link($"/my/rackets/{id}"));
    }
}
