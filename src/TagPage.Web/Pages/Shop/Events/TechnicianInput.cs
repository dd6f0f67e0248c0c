using System.ComponentModel.DataAnnotations;
using TagPage.Records.Events;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>What the forms of a technician post.</summary>
public sealed record TechnicianInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the name.")]
    [StringLength(60, ErrorMessage = "Keep the name within 60 characters.")]
    public string? Name { get; init; }

    [StringLength(60, ErrorMessage = "Keep the machine within 60 characters.")]
    public string? Machine { get; init; }

    [Required(ErrorMessage = "Enter the hours.")]
    [StringLength(80, ErrorMessage = "Keep the hours within 80 characters.")]
    public string? Hours { get; init; }

    public TechnicianEntry ToEntry() => new() { FormKey = FormKey, Name = Name!, Machine = Machine, Hours = Hours };
}
