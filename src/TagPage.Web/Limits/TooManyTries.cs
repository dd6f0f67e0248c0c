using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace TagPage.Web.Limits;

public static class TooManyTries
{
    /// <summary>Answers 429 and says when to come back (RFC 6585 section 4, RFC 9110 section 10.2.3).</summary>
    public static IActionResult TooMany(this PageModel page, TimeSpan wait)
    {
        page.Response.Headers.RetryAfter = Math.Ceiling(wait.TotalSeconds).ToString(CultureInfo.InvariantCulture);
        return page.StatusCode(StatusCodes.Status429TooManyRequests);
    }
}
