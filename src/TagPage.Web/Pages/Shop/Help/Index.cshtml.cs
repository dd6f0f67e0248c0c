using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Help;

/// <summary>Shows the manual in docs/.</summary>
public sealed class IndexModel(Manual manual, LicenceTexts licences) : PageModel
{
    public string Name { get; private set; } = "";

    public string Title { get; private set; } = "";

    public HtmlString Html { get; private set; } = HtmlString.Empty;

    public IReadOnlyList<(string Name, string Title)> Contents => manual.Contents;

    /// <summary>Only at the end of the page about licences.</summary>
    public IReadOnlyList<LicenceText> LicenceTexts => Name == "licences" ? licences.All : [];

    public IActionResult OnGet(string? name)
    {
        if (manual.Find(name ?? Manual.First) is not { } page)
            return NotFound();
        (Name, Title, Html) = (page.Name, page.Title, page.Html);
        return Page();
    }
}
