using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>Where signing out ends.</summary>
public sealed class OutModel : PageModel
{
    /// <summary>Every link of until now is void too.</summary>
    [BindProperty(SupportsGet = true)]
    public bool Everywhere { get; set; }

    public PageLanguage Spoken { get; private set; } = default!;

    public CornerPhrases Say => CornerWords.Of(Spoken.Language);

    public void OnGet() => Spoken = CornerWords.Settle(HttpContext, null);
}
