using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>Where signing out ends.</summary>
public sealed class OutModel : PageModel
{
    public PageLanguage Spoken { get; private set; } = default!;

    public CornerPhrases Say => CornerWords.Of(Spoken.Language);

    public void OnGet() => Spoken = CornerWords.Settle(HttpContext, null);
}
