using System.ComponentModel.DataAnnotations;
using TagPage.Records.PlayTime;

namespace TagPage.Web.Pages.Shop.Hours;

/// <summary>What the form for logged hours posts.</summary>
public sealed record HoursInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the day.")]
    [Range(typeof(DateOnly), "1970-01-01", "2099-12-31", ParseLimitsInInvariantCulture = true, ConvertValueInInvariantCulture = true, ErrorMessage = "Check the year.")]
    public DateOnly? PlayedOn { get; init; }

    [Range(typeof(DateOnly), "1970-01-01", "2099-12-31", ParseLimitsInInvariantCulture = true, ConvertValueInInvariantCulture = true, ErrorMessage = "Check the year.")]
    public DateOnly? LastDay { get; init; }

    [Required(ErrorMessage = "Enter how many hours.")]
    public decimal? Hours { get; init; }

    [StringLength(200, ErrorMessage = "Keep the note within 200 characters.")]
    public string? Note { get; init; }

    public HoursEntry ToEntry() => new()
    {
        FormKey = FormKey,
        PlayedOn = PlayedOn!.Value,
        LastDay = LastDay,
        Hours = Hours!.Value,
        Note = Note,
    };
}
