using Microsoft.AspNetCore.Mvc;

namespace TagPage.Web.Http.Forms;

/// <summary>A page behind a private link, the {token} of its route. It tells itself, with 404, that a link no longer works.</summary>
/// <typeparam name="TRow">What the link is about.</typeparam>
public abstract class LinkPage<TRow>() : KeyPage<TRow>("token") where TRow : class
{
    /// <summary>Then there is nothing saved to show.</summary>
    public bool IsVoid => Saved is null;

    protected sealed override IActionResult Missing()
    {
        Saved = null!;
        Response.StatusCode = StatusCodes.Status404NotFound;
        return Page();
    }
}
