using System.ComponentModel.DataAnnotations;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form for closed days posts.</summary>
public sealed record ClosedInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the first day.")]
    public DateOnly? FromOn { get; init; }

    public DateOnly? ToOn { get; init; }

    [StringLength(80, ErrorMessage = "Keep the note within 80 characters.")]
    public string? Note { get; init; }

    public ClosedDaysEntry ToEntry() => new() { FormKey = FormKey, FromOn = FromOn!.Value, ToOn = ToOn, Note = Note };
}
