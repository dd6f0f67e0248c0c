using System.ComponentModel.DataAnnotations;
using TagPage.Core.Rackets;
using TagPage.Records.LostAndFound;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>What the form about a lost racket posts.</summary>
public sealed record LostInput
{
    [Required(ErrorMessage = "Enter the day since which it has been lost.")]
    public DateOnly? Since { get; init; }

    [StringLength(LostNote.Longest, ErrorMessage = "Keep the note within 140 characters.")]
    public string? Note { get; init; }

    public LostEntry ToEntry() => new()
    {
        Since = Since!.Value,
        Note = Note,
    };
}
