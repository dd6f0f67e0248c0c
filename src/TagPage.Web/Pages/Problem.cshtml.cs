using System.Diagnostics;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Hosting;

namespace TagPage.Web.Pages;

/// <summary>The one page for everything that went wrong, whatever the verb. What broke stands in the log under the id it shows.</summary>
[IgnoreAntiforgeryToken]
[ResponseCache(NoStore = true)]
public sealed class ProblemModel(PublicAddress address, ILogger<ProblemModel> log) : PageModel
{
    public string Heading { get; private set; } = "";

    public string Advice { get; private set; } = "";

    public string? Id { get; private set; }

    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        var broken = HttpContext.Features.Get<IExceptionHandlerFeature>()?.Error;
        var refused = HttpContext.Features.Get<IStatusCodeReExecuteFeature>();
        // Typed into the address bar this is a page like any other that is not there.
        if (broken is null && refused is null)
            Response.StatusCode = StatusCodes.Status404NotFound;
        if (broken is not null)
        {
            Id = Activity.Current?.TraceId.ToString() ?? HttpContext.TraceIdentifier;
            log.LogError("What broke was shown as {Id}: {Kind}.", Id, broken.GetType().Name);
        }
        (Heading, Advice) = PlainHttpGuard.Stopped(HttpContext) ? NeedsHttps : Words(Response.StatusCode);
    }

    private (string, string) NeedsHttps => ("This page needs https",
        address.IsHttps
            ? $"Open it at {address.Base} instead. Over plain http, others on the network could read along."
            : "Over plain http, others on the network could read along. Open it on the shop's own machine, or give the shop an https address.");

    private static (string, string) Words(int status) => status switch
    {
        400 => ("This form cannot be sent any more", "Go back, load the page once more and send it again. The browser has to allow cookies from this page."),
        403 => ("This is not open to you", "Sign in as somebody who may see it."),
        404 => ("There is nothing here", "The address may have a slip in it, or the record is gone."),
        405 => ("This page cannot be used that way", "Go back and use the buttons on the page."),
        413 => ("That is too much at once", "Send less text, or fewer and smaller files in one go."),
        429 => ("Too many tries", "Wait a few minutes, then try again."),
        507 => ("The disk is full", "Nothing of this was saved. Make room on the shop's disk, then send it again."),
        < 500 => ("This cannot be done", "Go back, load the page once more and try again."),
        _ => ("Something broke on our side", "Nothing was saved. Try it once more; if it happens again, tell the shop."),
    };
}
