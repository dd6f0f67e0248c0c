using System.Globalization;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Labels.Geometry;
using TagPage.Records.Labels;
using TagPage.Web.Words;

namespace TagPage.Web.Labels;

/// <summary>What the label forms offer.</summary>
public static class LabelChoices
{
    public static IEnumerable<SelectListItem> Purposes =>
    [
        new("What was done", nameof(LabelPurpose.Done)),
        new("How to return it", nameof(LabelPurpose.Return)),
        new("What it measures", nameof(LabelPurpose.Measures)),
        new("The ticket, while it waits", nameof(LabelPurpose.Waiting)),
    ];

    public static IEnumerable<SelectListItem> Pages =>
    [
        new("tape, one label a page", nameof(LabelPages.OneEach)),
        new("tape, one strip with cut marks", nameof(LabelPages.Strip)),
        new("a sheet of labels", nameof(LabelPages.Sheet)),
    ];

    /// <summary>The tapes offered, and the racket's own colour where it is another.</summary>
    public static IEnumerable<SelectListItem> Tapes(string own, LabelSettings settings) =>
    [
        new($"as usual: {settings.TapeColour}", ""),
        .. TapeColours.OfLabels.Append(own).Where(name => name.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(name => new SelectListItem(name.Equals(own, StringComparison.OrdinalIgnoreCase) ? $"{name}, as the racket is marked" : name, name)),
    ];

    public static IEnumerable<SelectListItem> Inks =>
        [new("to suit the tape", ""), .. InkColours.Names.Select(name => new SelectListItem(name, name))];

    public static IEnumerable<SelectListItem> Widths(LabelSettings settings) =>
    [
        new($"as usual: {settings.TapeMm.ToString("0.#", CultureInfo.InvariantCulture)} mm", ""),
        .. Tape.Widths.Select(width => new SelectListItem($"{width} mm", $"{width}")),
    ];
}
