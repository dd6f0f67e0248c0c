using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace TagPage.Web.Http.Limits;

public static class TooManyTries
{
    /// <summary>Answers 429 and says when to come back (RFC 6585 section 4, RFC 9110 section 10.2.3).</summary>
    public static IActionResult TooMany(this PageModel page, TimeSpan wait)
    {
        page.Response.Headers.RetryAfter = Seconds(wait);
        return page.StatusCode(StatusCodes.Status429TooManyRequests);
    }

    /// <summary>The same with the page itself and a sentence on it, so that what was typed is kept.</summary>
    public static PageResult TooMany(this PageModel page, TimeSpan wait, string field, string sentence) =>
        page.Again(StatusCodes.Status429TooManyRequests, wait, field, sentence);

    /// <summary>Answers 503 with the page itself: not this visitor's fault, and soon over (RFC 9110 section 15.6.4).</summary>
    public static PageResult Busy(this PageModel page, string sentence) =>
        page.Again(StatusCodes.Status503ServiceUnavailable, TimeSpan.FromSeconds(10), "", sentence);

    private static PageResult Again(this PageModel page, int status, TimeSpan wait, string field, string sentence)
    {
        page.Response.Headers.RetryAfter = Seconds(wait);
        page.Response.StatusCode = status;
        page.ModelState.AddModelError(field, sentence);
        return page.Page();
    }

    private static string Seconds(TimeSpan wait) => Math.Ceiling(wait.TotalSeconds).ToString(CultureInfo.InvariantCulture);
}
