using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>So many hours were played with a racket today.</summary>
public sealed class HoursModel(ClientOnFileStore clients, OwnPageRacketStore rackets, OwnPagePlayStore store) : OwnPageModel(clients)
{
    public IActionResult OnGet(long id) => rackets.Get(Me.Id, id) is null ? NotFound() : Redirect(Link($"/my/rackets/{id}"));

    public IActionResult OnPost(long id, string? hours, string? formKey)
    {
        var read = double.TryParse(hours, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) ? n : 0;
        switch (store.AddHours(Me.Id, id, read, formKey ?? ""))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Done:
                this.Say(Say.Play.HoursSaved);
                break;
        }
        return Redirect(Link($"/my/rackets/{id}"));
    }
}
