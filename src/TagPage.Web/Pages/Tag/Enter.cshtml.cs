using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Tag;

/// <summary>
/// For those who cannot scan: leads from a typed code to its page. A readable code is redirected to its own address,
/// where it is looked up and counted.
/// </summary>
public sealed class EnterModel : PageModel
{
    public CodeForm Form { get; private set; } = new();

    public IActionResult OnGet(string? code)
    {
        if (!Request.Query.ContainsKey("code"))
            return Page();
        var reading = TagCode.Read(code);
        if (reading.Code is { } read)
            return LocalRedirect(PageLanguage.Of(HttpContext).Link("/t/" + read));
        Form = new CodeForm(code, TagWords.Of(HttpContext).Advice(TagVisit.Unread(reading.Outcome)));
        return Page();
    }
}
