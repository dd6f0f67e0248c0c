using System.ComponentModel.DataAnnotations;
using TagPage.Records.Rackets;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>What the hand-over form posts.</summary>
public sealed record HandOverInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter the number the racket gets.")]
    [Range(1, 999, ErrorMessage = "Enter a number between 1 and 999.")]
    public int? Number { get; init; }

    public HandOverEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Number = Number!.Value,
    };
}
