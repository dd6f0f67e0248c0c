using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Import;
using TagPage.Web.Http.Forms;
using TagPage.Web.Import;

namespace TagPage.Web.Pages.Shop.Import;

public sealed class CheckModel(Importer importer, ImportStore store, Uploads uploads) : PageModel
{
    public ImportReport Report { get; private set; } = default!;

    public IActionResult OnGet(string key)
    {
        if (ImportFiles.Of(uploads, key) is not { } files)
            return NotFound();
        Report = importer.Check(files);
        return Page();
    }

    public IActionResult OnPost(string key)
    {
        if (store.IsDone(key))
            return Redirect("/shop");
        if (ImportFiles.Of(uploads, key) is not { } files)
            return NotFound();
        Report = importer.Import(files, key);
        if (!Report.IsClean)
            return Page();
        uploads.Remove(key);
        this.Say($"Brought in: {Report.Summary}.");
        return Redirect("/shop");
    }
}
