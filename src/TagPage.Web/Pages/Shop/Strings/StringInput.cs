using System.ComponentModel.DataAnnotations;
using TagPage.Core.Strings;
using TagPage.Records.Strings;

namespace TagPage.Web.Pages.Shop.Strings;

/// <summary>What the string forms post.</summary>
public sealed record StringInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter the string’s name.")]
    [StringLength(60, ErrorMessage = "Keep the name within 60 characters.")]
    public string? Name { get; init; }

    [Required(ErrorMessage = "Choose what the string is made of.")]
    public Material? Material { get; init; }

    [Required(ErrorMessage = "Enter the diameter in mm, like 1.25.")]
    [Range(0.5, 1.6, ErrorMessage = "Enter a diameter between 0.5 and 1.6 mm.")]
    public decimal? GaugeMm { get; init; }

    public bool Offered { get; init; } = true;

    [StringLength(500, ErrorMessage = "Keep the note within 500 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    public StringEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Name = Name!,
        Material = Material!.Value,
        GaugeMm = GaugeMm!.Value,
        Offered = Offered,
        Note = Note,
    };
}
