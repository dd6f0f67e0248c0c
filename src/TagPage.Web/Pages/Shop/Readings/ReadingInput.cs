using System.ComponentModel.DataAnnotations;
using TagPage.Records.Readings;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Readings;

/// <summary>What the form for a later reading posts.</summary>
public sealed record ReadingInput
{
    public string FormKey { get; init; } = "";

    public string? Confirmed { get; init; }

    [Required(ErrorMessage = "Enter the day it was read.")]
    [LikelyYear]
    public DateOnly? TakenOn { get; init; }

    [RegularExpression(@"([01]?\d|2[0-3]):[0-5]\d", ErrorMessage = "Enter the time as 14:30, or leave it empty.")]
    public string? TakenAt { get; init; }

    [Required(ErrorMessage = "Enter the number the instrument shows.")]
    [Range(0.01, 4999.99, ErrorMessage = "Enter the number the instrument shows, above 0 and below 5000.")]
    public decimal? Value { get; init; }

    [Required(ErrorMessage = "Choose the instrument it was read on.")]
    public long? InstrumentId { get; init; }

    [StringLength(200, ErrorMessage = "Keep the note within 200 characters.")]
    public string? Note { get; init; }

    public ReadingEntry ToEntry() => new()
    {
        FormKey = FormKey,
        TakenOn = TakenOn!.Value,
        TakenAt = TakenAt,
        Value = Value!.Value,
        InstrumentId = InstrumentId!.Value,
        Note = Note,
    };
}
