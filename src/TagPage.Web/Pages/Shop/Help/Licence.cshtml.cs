using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Help;

/// <summary>One of the texts that came with the libraries.</summary>
public sealed class LicenceModel(LicenceTexts texts) : PageModel
{
    public string Title { get; private set; } = "";

    public string Text { get; private set; } = "";

    public IActionResult OnGet(string name)
    {
        if (texts.Find(name) is not { } text)
            return NotFound();
        (Title, Text) = (texts.All.FirstOrDefault(t => t.Name == name)?.Title ?? name, text);
        return Page();
    }
}
