using System.ComponentModel.DataAnnotations;
using TagPage.Core.Strings;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Settings.Care;

/// <summary>What the care guide forms post.</summary>
public sealed record CareGuideInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter a title.")]
    [StringLength(60, ErrorMessage = "Keep the title within 60 characters.")]
    public string? Title { get; init; }

    [Required(ErrorMessage = "Enter the end of its address, like natural-gut.")]
    [StringLength(40, ErrorMessage = "Keep the address within 40 characters.")]
    [RegularExpression("[a-z0-9]+(-[a-z0-9]+)*", ErrorMessage = "Use lower-case letters a to z, digits and single hyphens between them, like natural-gut.")]
    public string? Name { get; init; }

    /// <summary>Strings it is about; null for all.</summary>
    public Material? ForMaterial { get; init; }

    [Required(ErrorMessage = "Write the guide.")]
    [StringLength(20000, ErrorMessage = "Keep the guide within 20,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Markdown { get; init; }

    public CareGuideEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Title = Title!,
        Name = Name!,
        ForMaterial = ForMaterial,
        Markdown = Markdown!,
    };
}
