using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Setup;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>Looks at what is around the program when it is asked to.</summary>
public sealed class CheckModel(SetupCheck check) : PageModel
{
    public IReadOnlyList<SetupFinding> Findings { get; private set; } = [];

    public string Summary => Findings.Count(f => f.State != SetupState.Good) switch
    {
        0 => "Everything is in order",
        1 => "1 thing to look at",
        var n => $"{n} things to look at",
    };

    public async Task<IActionResult> OnPost(CancellationToken cancel)
    {
        Findings = await check.All(isServing: true, cancel);
        return Page();
    }
}
