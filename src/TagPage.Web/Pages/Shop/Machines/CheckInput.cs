using System.ComponentModel.DataAnnotations;
using TagPage.Core.Units;
using TagPage.Records.Machines;

namespace TagPage.Web.Pages.Shop.Machines;

/// <summary>What the form of a check posts.</summary>
public sealed record CheckInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the day of the check.")]
    public DateOnly? CheckedOn { get; init; }

    [Required(ErrorMessage = "Enter what it was set to.")]
    [Range(1.0, 100.0, ErrorMessage = "Enter a tension between 1 and 100.")]
    public decimal? Reference { get; init; }

    [Required(ErrorMessage = "Enter what it pulled.")]
    [Range(1.0, 200.0, ErrorMessage = "Enter a tension between 1 and 200.")]
    public decimal? Measured { get; init; }

    public TensionUnit Unit { get; init; }

    [StringLength(120, ErrorMessage = "Keep the note within 120 characters.")]
    public string? Note { get; init; }

    public CheckEntry ToEntry() => new()
    {
        FormKey = FormKey,
        CheckedOn = CheckedOn!.Value,
        Reference = Reference!.Value,
        Measured = Measured!.Value,
        Unit = Unit,
        Note = Note,
    };
}
