using System.Globalization;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// A page about one record, the one its route calls {id}. It is fetched before every handler; without it the answer is 404.
/// </summary>
/// <typeparam name="TRow">What the page shows of it.</typeparam>
public abstract class RecordPage<TRow> : PageModel where TRow : class
{
    public long Id { get; private set; }

    public TRow Saved { get; private set; } = default!;

    /// <summary>Else than the route's {id} for a page that adds something to the record its query names.</summary>
    protected virtual long Asked => long.Parse((string)RouteData.Values["id"]!, CultureInfo.InvariantCulture);

    /// <returns>Null for a record that is not there, or not theirs to see.</returns>
    protected abstract TRow? Find(long id);

    // Else its name makes it one itself, for requests with the verb PAGE.
    [NonHandler]
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        Id = Asked;
        if (Find(Id) is { } row)
            Saved = row;
        else
            context.Result = NotFound();
    }
}
