using System.ComponentModel.DataAnnotations;
using TagPage.Records.Machines;

namespace TagPage.Web.Pages.Shop.Machines;

/// <summary>What the machine forms post.</summary>
public sealed record MachineInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter a name by which you know it.")]
    [StringLength(60, ErrorMessage = "Keep the name within 60 characters.")]
    public string? Name { get; init; }

    [Required(ErrorMessage = "Choose how it pulls.")]
    public MachineKind? Kind { get; init; }

    [Range(1, 730, ErrorMessage = "Enter 1 to 730 days, or leave it empty.")]
    public int? EveryDays { get; init; }

    public bool IsRetired { get; init; }

    public MachineEntry ToEntry() => new() { FormKey = FormKey, Version = Version, Name = Name!, Kind = Kind!.Value, EveryDays = EveryDays, IsRetired = IsRetired };
}
