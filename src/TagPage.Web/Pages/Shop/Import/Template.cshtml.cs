using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Import;

namespace TagPage.Web.Pages.Shop.Import;

/// <summary>An empty file with the header that the importer reads.</summary>
public sealed class TemplateModel : PageModel
{
    public IActionResult OnGet(string file) => ImportSheets.All.FirstOrDefault(s => s.File == file) is { } sheet
        ? File(sheet.Template(), "text/csv; charset=utf-8", sheet.File)
        : NotFound();
}
