using System.ComponentModel.DataAnnotations;
using TagPage.Records.Loans;

namespace TagPage.Web.Pages.Shop.Loans;

/// <summary>What the forms about a racket of the shop’s own post.</summary>
public sealed record LoanRacketInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter a name by which you tell it apart.")]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? Name { get; init; }

    [StringLength(200, ErrorMessage = "Keep the note within 200 characters.")]
    public string? Note { get; init; }

    public bool IsEnded { get; init; }

    public LoanRacketEntry ToEntry() => new() { FormKey = FormKey, Version = Version, Name = Name!, Note = Note, IsEnded = IsEnded };
}
