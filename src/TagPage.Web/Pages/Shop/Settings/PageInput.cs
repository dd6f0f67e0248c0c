using System.ComponentModel.DataAnnotations;
using TagPage.Core.Colour;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form about the shop's own page posts.</summary>
public sealed record PageInput : IValidatableObject
{
    public int Version { get; init; }

    [StringLength(20000, ErrorMessage = "Keep the page within 20,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? HomeMarkdown { get; init; }

    /// <summary>#RRGGBB; null for the product's own.</summary>
    public string? Accent { get; init; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Accent is not null && !Rgb.TryParse(Accent, out _))
            yield return new("Write the colour as # and six digits or letters A to F, like #1E5B49.", [nameof(Accent)]);
    }

    public HomePageEntry ToEntry() => new()
    {
        Version = Version,
        HomeMarkdown = HomeMarkdown,
        Accent = Accent,
    };
}
