using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.My;

/// <summary>Takes back what was asked for, until the racket is on the machine.</summary>
public sealed class CancelModel(ClientOnFileStore clients, OrderStore orders) : CornerModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my"));

    public IActionResult OnPost(long id)
    {
        switch (orders.Cancel(Me.Id, id))
        {
            case Outcome.Done done:
                this.Say(Say.Order.Cancelled);
                return Redirect(Link($"/my/rackets/{done.Id}"));
            case Outcome.Refused refused:
                this.Say(Say.Order.TooLate);
                return Redirect(Link($"/my/rackets/{refused.Sentence}"));
            default:
                return NotFound();
        }
    }
}
