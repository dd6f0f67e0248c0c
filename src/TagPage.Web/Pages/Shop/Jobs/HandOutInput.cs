using System.ComponentModel.DataAnnotations;
using TagPage.Records.Jobs;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What is noted when a racket is handed out.</summary>
public sealed record HandOutInput
{
    [Required(ErrorMessage = "Enter the day it was collected.")]
    public DateOnly? CollectedOn { get; init; }

    public bool Paid { get; init; }

    public HandOutEntry ToEntry() => new()
    {
        CollectedOn = CollectedOn!.Value,
        Paid = Paid,
    };
}
