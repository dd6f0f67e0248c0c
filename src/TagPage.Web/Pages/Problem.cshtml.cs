using System.Diagnostics;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.Data.Sqlite;

namespace TagPage.Web.Pages;

/// <summary>The one page for everything that went wrong. What broke stands in the log under the id it shows.</summary>
[IgnoreAntiforgeryToken]
[ResponseCache(NoStore = true)]
public sealed class ProblemModel : PageModel
{
    private const int SqliteFull = 13;

    public string Heading { get; private set; } = "";

    public string Advice { get; private set; } = "";

    public string? Id { get; private set; }

    public void OnGet(int code) => Show(code);

    public void OnPost(int code) => Show(code);

    private void Show(int code)
    {
        var broken = HttpContext.Features.Get<IExceptionHandlerFeature>()?.Error;
        if (broken is not null)
            Id = Activity.Current?.TraceId.ToString() ?? HttpContext.TraceIdentifier;
        (Heading, Advice) = broken is SqliteException { SqliteErrorCode: SqliteFull }
            ? ("The disk is full", "Nothing of this was saved. Make room on the shop's disk, then send it again.")
            : Words(code);
    }

    private static (string Heading, string Advice) Words(int code) => code switch
    {
        400 => ("The form had been open too long", "Go back, load the page once more and send it again."),
        404 => ("There is nothing here", "The address may have a slip in it, or the record is gone."),
        413 => ("That is too much at once", "Send fewer or smaller files in one go."),
        429 => ("Too many tries", "Wait a few minutes, then try again."),
        _ => ("Something broke on our side", "Nothing was saved. Try it once more; if it happens again, tell the shop."),
    };
}
