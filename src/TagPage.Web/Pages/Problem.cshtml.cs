using System.Diagnostics;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Http;
using TagPage.Web.Words;

namespace TagPage.Web.Pages;

/// <summary>The one page for everything that went wrong, whatever the verb. The log has the details under the id it shows.</summary>
[IgnoreAntiforgeryToken]
[ResponseCache(NoStore = true)]
public sealed class ProblemModel(PublicAddress address, ILogger<ProblemModel> log) : PageModel
{
    public string Heading { get; private set; } = "";

    public string Advice { get; private set; } = "";

    public Language Language { get; private set; } = Languages.English;

    public string? Id { get; private set; }

    [NonHandler]
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        var broken = HttpContext.Features.Get<IExceptionHandlerFeature>()?.Error;
        var refused = HttpContext.Features.Get<IStatusCodeReExecuteFeature>();
        // Taken as it is: a text that becomes a path by itself is read as an address once more.
        Language = Spoken(new PathString(refused?.OriginalPath ?? HttpContext.Features.Get<IExceptionHandlerPathFeature>()?.Path));
        // Typed into the address bar this is a page like any other that is not there.
        if (broken is null && refused is null)
            Response.StatusCode = StatusCodes.Status404NotFound;
        if (broken is not null)
        {
            Id = Activity.Current?.TraceId.ToString() ?? HttpContext.TraceIdentifier;
            log.LogError("What broke was shown as {Id}: {Kind}.", Id, broken.GetType().Name);
        }
        (Heading, Advice) = PlainHttpGuard.Stopped(HttpContext) ? NeedsHttps : Words(Response.StatusCode, Language.Phrases.Problem);
        if (ReadableForm.Stopped(HttpContext))
            (Heading, Advice) = (Language.Phrases.Problem.Unread, Language.Phrases.Problem.UnreadAdvice);
    }

    private (string, string) NeedsHttps => ("This page needs https",
        address.IsHttps
            ? $"Open it at {address.Base} instead. Over plain http, others on the network could read what you send."
            : "Over plain http, others on the network could read what you send. Open it on the shop’s own machine, or give the shop an https address.");

    private static (string, string) Words(int status, ProblemPhrases say) => status switch
    {
        400 => (say.TooOld, say.TooOldAdvice),
        403 => ("You cannot open this page", "Sign in as somebody who may see it."),
        404 => (say.Absent, say.AbsentAdvice),
        413 => ("That is too much at once", "Send less text, or fewer and smaller files in one go."),
        429 => (say.TooMany, say.TooManyAdvice),
        507 => (say.Full, say.FullAdvice),
        < 500 => (say.Cannot, say.CannotAdvice),
        _ => (say.Broken, say.BrokenAdvice),
    };

    /// <summary>The visitor's, on pages that speak it; the shop area is in English.</summary>
    private Language Spoken(PathString path) =>
        path.StartsWithSegments("/t") || path.StartsWithSegments("/n") || path.StartsWithSegments("/my") ? PageLanguage.Of(HttpContext).Language : Languages.English;
}
