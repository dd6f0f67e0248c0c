using System.ComponentModel.DataAnnotations;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What the form posts. All of it is text, so that what does not fit is said in the reader's language.</summary>
public sealed record OrderInput
{
    public const int LongestWhere = 60;

    public string? FormKey { get; init; }
    public string? Kind { get; init; }
    public string? Strings { get; init; }
    public string? Tension { get; init; }
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }
    /// <summary>In their own words; where the shop has stops, the number of one or nothing.</summary>
    public string? Where { get; init; }
    public string? By { get; init; }
    public string? NeededBy { get; init; }
}
