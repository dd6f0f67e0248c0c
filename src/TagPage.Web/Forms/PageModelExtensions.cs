using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;

namespace TagPage.Web.Forms;

public static class PageModelExtensions
{
    private const string Line = "StatusLine";

    /// <summary>Puts a refusal beside its field; the page is shown again with all that was typed.</summary>
    public static IActionResult Refuse(this PageModel page, Outcome.Refused refused)
    {
        page.ModelState.AddModelError(refused.Field.Length == 0 ? "" : "Input." + refused.Field, refused.Sentence);
        return page.Page();
    }

    /// <summary>
    /// The same for a form that changes a record: once told that somebody else saved it, the owner's next press may
    /// replace the version now stored.
    /// </summary>
    public static IActionResult Refuse(this PageModel page, Outcome.Refused refused, int storedVersion)
    {
        if (refused == Outcome.Stale)
            page.ModelState.SetModelValue("Input.Version", storedVersion, storedVersion.ToString(CultureInfo.InvariantCulture));
        return page.Refuse(refused);
    }

    /// <summary>Says on the next page what was done.</summary>
    public static void Say(this PageModel page, string sentence) => page.TempData[Line] = sentence;

    public static string? StatusLine(this Microsoft.AspNetCore.Mvc.ViewFeatures.ITempDataDictionary tempData) => tempData[Line] as string;
}
