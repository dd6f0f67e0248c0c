using System.ComponentModel.DataAnnotations;
using TagPage.Records.Stops;

namespace TagPage.Web.Pages.Shop.Stops;

/// <summary>What the stop forms post.</summary>
public sealed record StopInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter a name; clients read it too.")]
    [StringLength(60, ErrorMessage = "Keep the name within 60 characters.")]
    public string? Name { get; init; }

    [Required(ErrorMessage = "Choose what it is.")]
    public StopKind? Kind { get; init; }

    public bool IsEnded { get; init; }

    public StopEntry ToEntry() => new() { FormKey = FormKey, Version = Version, Name = Name!, Kind = Kind!.Value, IsEnded = IsEnded };
}
