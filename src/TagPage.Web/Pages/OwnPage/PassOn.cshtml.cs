using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A racket was sold or given away: its tag is retired, its history stays here, and the new owner starts afresh at the shop.</summary>
public sealed class PassOnModel(ClientOnFileStore clients, OwnPageCodeStore codes, OwnPageRacketStore rackets, PassOnStore store) : FreshModel(clients, codes)
{
    public OwnPageRacket Racket { get; private set; } = new();

    protected override string Here => $"/my/pass-on/{Racket.RacketId}";

    public IActionResult OnGet(long id) => !Load(id) ? NotFound() : AskForCode() ?? Page();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        switch (store.PassOn(Me.Id, User.OwnPageSession(), id))
        {
            case PassOnStore.Answer.NotFresh:
                return SayCodeIsOver();
            case PassOnStore.Answer.Absent:
                return NotFound();
            case PassOnStore.Answer.AtShop:
                ModelState.AddModelError("", Say.Details.PassAtShop);
                return Page();
        }
        this.Say(Say.Details.PassDone);
        return Redirect(Link("/my"));
    }

    private bool Load(long id)
    {
        if (rackets.Get(Me.Id, id) is not { IsMine: true } racket)
            return false;
        Racket = racket;
        return true;
    }
}
