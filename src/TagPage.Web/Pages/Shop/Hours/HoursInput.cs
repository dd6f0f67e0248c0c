using System.ComponentModel.DataAnnotations;
using TagPage.Records.PlayTime;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Hours;

/// <summary>What the form for logged hours posts.</summary>
public sealed record HoursInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the day.")]
    [LikelyYear]
    public DateOnly? PlayedOn { get; init; }

    [LikelyYear]
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
