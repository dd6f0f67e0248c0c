using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Tag;

/// <summary>
/// For whoever cannot scan: takes a typed code to its page. What reads as a code moves to its own address, where it is
/// looked up and counted.
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
