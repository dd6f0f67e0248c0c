using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// A page about one record that its route names by something else than its id, like a tag's code. It is fetched before
/// every handler; without it the answer is 404.
/// </summary>
/// <typeparam name="TRow">What the page shows of it.</typeparam>
/// <param name="key">The route's word for it, like code for {code}.</param>
public abstract class KeyPage<TRow>(string key) : PageModel where TRow : class
{
    public TRow Saved { get; protected set; } = default!;

    /// <returns>Null for a record that is not there, or that the page is not about.</returns>
    protected abstract TRow? Find(string key);

    // Else its name makes it one itself, for requests with the verb PAGE.
    [NonHandler]
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        if (Find((string)RouteData.Values[key]!) is { } row)
            Saved = row;
        else
            context.Result = Missing();
    }

    protected virtual IActionResult Missing() => NotFound();
}
