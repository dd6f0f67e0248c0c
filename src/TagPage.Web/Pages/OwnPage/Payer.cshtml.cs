using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Tells the owner who should pay. A payer may pay for many, so only the owner changes it.</summary>
public sealed class PayerModel(ClientOnFileStore clients, OwnPageDetailsStore store) : OwnPageModel(clients)
{
    public const int Longest = 400;

    public sealed record Fields
    {
        public string? FormKey { get; init; }

        public string? Words { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public IActionResult OnGet() => Redirect(Link("/my/details"));

    public IActionResult OnPost()
    {
        if (Input.Words is { Length: <= Longest } words)
            Tell(store.AskAboutPayer(Me.Id, words, Input.FormKey ?? ""));
        return Redirect(Link("/my/details"));
    }

    private void Tell(Outcome outcome)
    {
        if (outcome is Outcome.Done)
            this.Say(Say.Details.PayerSent);
        else if (outcome is Outcome.Refused { Why: SaidEnough enough })
            this.Say(Say.Details.PayerTooMany.Fill(("most", $"{enough.Most}")));
    }
}
