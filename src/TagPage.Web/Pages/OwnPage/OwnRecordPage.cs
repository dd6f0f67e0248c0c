using System.Globalization;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>
/// A page about one record of the client's, the one its route calls {id}. It is fetched before every handler; without it,
/// or where it is somebody else's, the answer is 404.
/// </summary>
/// <typeparam name="TRow">What the page shows of it.</typeparam>
public abstract class OwnRecordPage<TRow>(ClientOnFileStore clients) : OwnPageModel(clients) where TRow : class
{
    public long Id { get; private set; }

    public TRow Saved { get; private set; } = default!;

    protected abstract TRow? Find(long id);

    [NonHandler]
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        Id = long.Parse((string)RouteData.Values["id"]!, CultureInfo.InvariantCulture);
        if (Find(Id) is { } row)
            Saved = row;
        else
            context.Result = NotFound();
    }
}
