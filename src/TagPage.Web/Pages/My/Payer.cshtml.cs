using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>Says to the owner who should pay. A payer may pay for many, so it is the owner who changes it.</summary>
public sealed class PayerModel(ClientOnFileStore clients, MyDetailsStore store) : CornerModel(clients)
{
    public const int Longest = 400;

    public sealed record Fields
    {
        public string? Words { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public IActionResult OnGet() => Redirect(Link("/my/details"));

    public IActionResult OnPost()
    {
        if (Input.Words is { Length: <= Longest } words)
        {
            var isSent = store.AskAboutPayer(Me.Id, words);
            this.Say(isSent ? Say.Details.PayerSent : Say.Details.PayerTooMany.Fill(("most", $"{MyDetailsStore.MostAboutPayerADay}")));
        }
        return Redirect(Link("/my/details"));
    }
}
