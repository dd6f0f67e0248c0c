using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Printing;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>A page to hold a ruler against.</summary>
public sealed class TestModel(LabelSettingsStore settings) : PageModel
{
    public IActionResult OnGet(string paper = "tape") => File(LabelPdf.Of(
    [
        paper == Paper.A4.Name ? TestPages.On(Paper.A4)
        : paper == Paper.Letter.Name ? TestPages.On(Paper.Letter)
        : TestPages.On(settings.Get().Stock()),
    ]), "application/pdf");
}
