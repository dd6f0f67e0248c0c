using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Audit;
using TagPage.Records.Import;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;
using TagPage.Web.Import;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Everything the shop keeps about a client and the players, to take away. It answers the press itself; nothing is left lying about.</summary>
public sealed class ExportModel(ClientOnFileStore clients, OwnPageCodeStore codes, ExportStore store, Uploads uploads, SecurityLog log, ShopClock clock) : OwnPageModel(clients)
{
    public IActionResult OnGet() => AskForCode(codes) ?? Page();

    public async Task<IActionResult> OnPost()
    {
        if (!codes.IsFresh(Myself))
            return Refuse(new CodeRanOut());
        log.Note(HttpContext, AuditEvent.ClientDownloaded, detail: $"client {Me.Id}");
        var zip = await ZipDownload.Of(HttpContext, uploads, $"rackets-{clock.Today:yyyy-MM-dd}.zip", stream =>
        {
            ExportZip.Write(stream, give => store.Read(Me.Id, give));
            return true;
        });
        return zip!;
    }
}
