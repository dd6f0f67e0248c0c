using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Cancels what was asked for, until the racket is on the machine.</summary>
public sealed class CancelModel(ClientOnFileStore clients, OrderStore orders) : OwnPageModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my"));

    public IActionResult OnPost(long id)
    {
        switch (orders.Cancel(Me.Id, id))
        {
            case Outcome.Done done:
                this.Say(Say.Order.Cancelled);
                return Redirect(Link($"/my/rackets/{done.Id}"));
            case Outcome.Refused { Why: OrderUnderWay underWay }:
                this.Say(Say.Order.TooLate);
                return Redirect(Link($"/my/rackets/{underWay.Racket}"));
            default:
                return NotFound();
        }
    }
}
