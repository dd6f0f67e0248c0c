using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A lost racket is back.</summary>
public sealed class BackModel(ClientOnFileStore clients, OwnPageRacketStore rackets, LostStore store) : OwnPageModel(clients)
{
    public IActionResult OnGet(long id) => rackets.Get(Me.Id, id) is null ? NotFound() : Redirect(Link($"/my/rackets/{id}"));

    public IActionResult OnPost(long id)
    {
        if (store.Back(Who.Client(Me.Id), id) is Outcome.Absent)
            return NotFound();
        this.Say(Say.Lost.IsBack);
        return Redirect(Link($"/my/rackets/{id}"));
    }
}
