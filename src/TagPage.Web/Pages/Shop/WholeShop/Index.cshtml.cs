using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Audit;
using TagPage.Records.Backups;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.WholeShop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Import;
using TagPage.Web.WholeShop;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.WholeShop;

/// <summary>A whole shop to take away, and the way in for one.</summary>
[UploadLimit(Most)]
public sealed class IndexModel(WholeShopStore store, BackupStore backups, Uploads uploads, SecurityLog log, ShopClock clock) : PageModel
{
    /// <summary>Bytes of a zip; photos are most of it.</summary>
    private const long Most = 4_000_000_000;

    public sealed record Fields
    {
        public string FormKey { get; init; } = "";
        public IFormFile? Sent { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public bool InUse => store.InUse() is not null;

    public void OnGet() => Input = new Fields { FormKey = FormKey.New() };

    /// <summary>It answers the press itself; nothing is left lying about.</summary>
    public async Task<IActionResult> OnPostDownload()
    {
        var who = User.AtShop();
        if (await ZipDownload.Of(HttpContext, uploads, $"shop-{clock.Today:yyyy-MM-dd}.zip", stream => WholeShopZip.Write(stream, give => store.Read(who, give))) is not { } zip)
            return NotFound();
        log.Note(HttpContext, AuditEvent.ShopDownloaded);
        return zip;
    }

    public IActionResult OnPost()
    {
        if (Input.Sent is not { Length: > 0 } sent)
            return Refuse("Choose the zip file.");
        using var stream = sent.OpenReadStream();
        var (parts, wrong) = WholeShopZip.Read(stream);
        if (wrong is not null)
            return Refuse(wrong);
        if (!InUse && backups.Make(BackupFile.BeforeImport) is { } fault)
            return Refuse(BackupWords.NotFirst(fault));
        return this.After(store.TakeIn(User.AtShop(), Input.FormKey, parts), _ =>
        {
            log.Note(HttpContext, AuditEvent.ShopTakenIn);
            return this.GoOn("/shop", "The shop has been taken in.");
        });
    }

    private PageResult Refuse(string sentence)
    {
        ModelState.AddModelError("Input.Sent", sentence);
        return Page();
    }
}
