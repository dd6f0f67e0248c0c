using TagPage.Records.Jobs;
using TagPage.Records.Stops;

namespace TagPage.Web.Pages.Shop.Stops;

/// <summary>Rackets at one stop that one and the same press moves.</summary>
/// <param name="Stop">The stop.</param>
/// <param name="Key">Tells the stop's lists apart.</param>
/// <param name="Heading">Over the list.</param>
/// <param name="Jobs">The rackets.</param>
/// <param name="Handler">Of the page, for one racket and for all.</param>
/// <param name="One">On each racket's button.</param>
/// <param name="All">On the button for all; null for none.</param>
public sealed record RoundList(StopRow Stop, string Key, string Heading, IReadOnlyList<JobRow> Jobs, string Handler, string One, string? All);
