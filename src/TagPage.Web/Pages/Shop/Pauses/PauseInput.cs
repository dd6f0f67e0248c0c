using System.ComponentModel.DataAnnotations;
using TagPage.Records.PlayTime;

namespace TagPage.Web.Pages.Shop.Pauses;

/// <summary>What the pause forms post.</summary>
public sealed record PauseInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the first day without play.")]
    [Range(typeof(DateOnly), "1970-01-01", "2099-12-31", ParseLimitsInInvariantCulture = true, ConvertValueInInvariantCulture = true, ErrorMessage = "Check the year.")]
    public DateOnly? FromOn { get; init; }

    [Range(typeof(DateOnly), "1970-01-01", "2099-12-31", ParseLimitsInInvariantCulture = true, ConvertValueInInvariantCulture = true, ErrorMessage = "Check the year.")]
    public DateOnly? ToOn { get; init; }

    [StringLength(200, ErrorMessage = "Keep the note within 200 characters.")]
    public string? Note { get; init; }

    public PauseEntry ToEntry() => new()
    {
        FormKey = FormKey,
        FromOn = FromOn!.Value,
        ToOn = ToOn,
        Note = Note,
    };
}
