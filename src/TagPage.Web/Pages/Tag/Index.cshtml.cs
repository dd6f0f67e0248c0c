using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Tag;

public sealed class IndexModel(TagLookup door, ShopStore shops) : PageModel
{
    private const int MostShown = 40;

    public ShopDetails Shop => shops.Get();

    public TagVisit Visit { get; private set; } = default!;

    /// <summary>Enough of what was asked for to compare it with a tag.</summary>
    public string Typed { get; private set; } = "";

    public bool IsOwner => User.Identity is { IsAuthenticated: true };

    public IActionResult OnGet(string code)
    {
        Typed = code.Length > MostShown ? code[..MostShown] + "…" : code;
        Visit = door.Open(code, HttpContext);
        Response.StatusCode = Status(Visit.Answer);
        if (Visit.Wait > TimeSpan.Zero)
            Response.Headers.RetryAfter = Math.Ceiling(Visit.Wait.TotalSeconds).ToString(CultureInfo.InvariantCulture);
        return Page();
    }

    /// <summary>
    /// A retired tag is gone for good (410), so that nobody looks for it again. One not in use yet is 404 like an
    /// unknown one: there is nothing there so far.
    /// </summary>
    private static int Status(TagAnswer answer) => answer switch
    {
        TagAnswer.Live => StatusCodes.Status200OK,
        TagAnswer.Refused => StatusCodes.Status429TooManyRequests,
        TagAnswer.Retired => StatusCodes.Status410Gone,
        _ => StatusCodes.Status404NotFound,
    };
}
