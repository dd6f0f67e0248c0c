using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Web.Import;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Everything the shop keeps about a client and the players, to download. It answers the press itself; nothing is stored.</summary>
public sealed class ExportModel(ClientOnFileStore clients, OwnPageCodeStore codes, ExportStore store, ShopClock clock) : FreshModel(clients, codes)
{
    protected override string Here => "/my/export";

    public IActionResult OnGet() => AskForCode() ?? Page();

    public IActionResult OnPost() => AskForCode() is not null
        ? SayCodeIsOver()
        : File(ExportZip.Of(store.Read(Me.Id)), "application/zip", $"rackets-{clock.Today:yyyy-MM-dd}.zip");
}
