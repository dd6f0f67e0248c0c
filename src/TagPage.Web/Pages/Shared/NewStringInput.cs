using System.ComponentModel.DataAnnotations;
using TagPage.Core.Strings;
using TagPage.Records.Jobs;

namespace TagPage.Web.Pages.Shared;

/// <summary>A string that is not in the catalogue yet, typed in with the job that needs it.</summary>
public sealed record NewStringInput
{
    [StringLength(60, ErrorMessage = "Keep the name within 60 characters.")]
    public string? Name { get; init; }

    public Material? Material { get; init; }

    [Range(0.5, 1.6, ErrorMessage = "Enter a diameter between 0.5 and 1.6 mm.")]
    public decimal? GaugeMm { get; init; }

    public NewStringPlace Place { get; init; }

    public NewStringEntry ToEntry() => new()
    {
        Name = Name,
        Material = Material,
        GaugeMm = GaugeMm,
        Place = Place,
    };
}
