using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.Prepaid;
using TagPage.Records.Privacy;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>
/// Asks to be forgotten: what is in the way and what the shop keeps is said first, and for seven days it can be undone.
/// </summary>
public sealed class ForgetModel(ClientOnFileStore clients, OwnPageCodeStore codes, ForgetStore store, PrepaidStore prepaid, OrderStore orders) : OwnPageModel(clients)
{
    /// <summary>The heading of what is wrong: what the press was for, and did not do.</summary>
    public string NotDone { get; private set; } = "";

    public IReadOnlyList<OpenTicket> Open => store.Open(Me.Id);

    /// <summary>Restrings paid in advance that go with the client’s data.</summary>
    public int? PrepaidLost => prepaid.LostWith(Myself, Me.Id);

    public IActionResult OnGet() => AskForCode(codes) ?? Page();

    public IActionResult OnPost()
    {
        NotDone = Say.Details.NotDeleted;
        return After(store.Ask(Myself, Me.Id), _ => GoOn("/my/details", Say.Details.ForgetAsked));
    }

    /// <summary>Takes back what was asked for, until the racket is on the machine.</summary>
    public IActionResult OnPostCancel(long job)
    {
        NotDone = Say.Order.NotCancelled;
        return After(orders.Cancel(Myself, job), _ => GoOn("/my/forget", Say.Order.Cancelled));
    }

    public string Line(OpenTicket ticket) => Say.Details.OpenLine.Fill(
        ("racket", Spoken.Phrases.Trade.RacketOf.Fill(("player", GivenNames.Of(Open.Select(o => o.Player))[ticket.Player]), ("number", $"{ticket.Number}"))),
        ("state", ticket.State == JobState.Collected ? Say.Details.NotPaid : Names.Job(ticket.State, ticket.Expected)!));
}
