using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>So many hours were played with a racket today.</summary>
public sealed class HoursModel(ClientOnFileStore clients, OwnPageRacketStore rackets, HoursStore store, ShopClock clock) : OwnPageModel(clients)
{
    public IActionResult OnGet(long id) => rackets.Get(Me.Id, id) is null ? NotFound() : Redirect(Link($"/my/rackets/{id}"));

    public IActionResult OnPost(long id, string? hours, string? formKey)
    {
        var read = decimal.TryParse(hours, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) ? n : 0;
        switch (store.Add(Myself, id, new HoursEntry { FormKey = formKey ?? "", PlayedOn = clock.Today, Hours = read }))
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
