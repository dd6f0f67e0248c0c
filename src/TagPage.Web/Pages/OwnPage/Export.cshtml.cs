using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Web.Import;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Everything the shop keeps about a client and the players, to take away. It answers the press itself; nothing is left lying about.</summary>
public sealed class ExportModel(ClientOnFileStore clients, OwnPageCodeStore codes, ExportStore store, ShopClock clock) : OwnPageModel(clients)
{
    public IActionResult OnGet() => AskForCode(codes) ?? Page();

    public IActionResult OnPost() => codes.IsFresh(Myself)
        ? File(ExportZip.Of(store.Read(Me.Id)), "application/zip", $"rackets-{clock.Today:yyyy-MM-dd}.zip")
        : Refuse(new CodeRanOut());
}
