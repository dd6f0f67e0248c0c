using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Rackets;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Says how a racket is used.</summary>
public sealed class RoleModel(ClientOnFileStore clients, OwnPageRacketStore rackets) : OwnPageModel(clients)
{
    public IActionResult OnGet(long id) => rackets.Get(Me.Id, id) is null ? NotFound() : Redirect(Link($"/my/rackets/{id}"));

    public IActionResult OnPost(long id, RacketState? role)
    {
        if (!ModelState.IsValid || role is not { } chosen || !OwnPageRacketStore.Roles.Contains(chosen))
            return rackets.Get(Me.Id, id) is null ? NotFound() : Redirect(Link($"/my/rackets/{id}"));
        if (rackets.SetRole(Me.Id, id, chosen) is Outcome.Absent)
            return NotFound();
        this.Say($"{Say.Racket.RoleSaved} {Names.Of(chosen)}");
        return Redirect(Link($"/my/rackets/{id}"));
    }
}
