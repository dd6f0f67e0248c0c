using System.ComponentModel.DataAnnotations;
using TagPage.Core.Strings;
using TagPage.Records.Readings;

namespace TagPage.Web.Pages.Shop.Settings.Instruments;

/// <summary>What the instrument forms post.</summary>
public sealed record InstrumentInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter a name by which you know it.")]
    [StringLength(40, ErrorMessage = "Keep the name within 40 characters.")]
    public string? Name { get; init; }

    [Required(ErrorMessage = "Choose what it shows.")]
    public ReadingScale? Scale { get; init; }

    public InstrumentEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Name = Name!,
        Scale = Scale!.Value,
    };
}
