using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using TagPage.Records.Labels;

namespace TagPage.Web.Labels;

/// <summary>
/// The address of a racket's label as a file. It carries how to print and nothing about people: names and lines come
/// from the records, so that the same address prints the same label again.
/// </summary>
public static class LabelLink
{
    public static string Of(long racket, long? job, LabelEntry input, string format = "pdf") => QueryHelpers.AddQueryString(
        $"/shop/labels/racket/{racket.ToString(CultureInfo.InvariantCulture)}",
        new Dictionary<string, string?>
        {
            ["handler"] = format,
            ["job"] = job?.ToString(CultureInfo.InvariantCulture),
            [nameof(input.Purpose)] = input.Purpose.ToString(),
            [nameof(input.TapeMm)] = input.TapeMm?.ToString(CultureInfo.InvariantCulture),
            [nameof(input.Whose)] = input.Whose.ToString(),
            [nameof(input.Logo)] = input.Logo.ToString(),
            [nameof(input.Fold)] = input.Fold.ToString(),
            [nameof(input.Copies)] = input.Copies.ToString(CultureInfo.InvariantCulture),
            [nameof(input.Pages)] = input.Pages.ToString(),
            [nameof(input.FirstFree)] = input.FirstFree.ToString(CultureInfo.InvariantCulture),
        });
}
