using System.ComponentModel.DataAnnotations;
using TagPage.Records.PlayTime;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Pauses;

/// <summary>What the pause forms post.</summary>
public sealed record PauseInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the first day without play.")]
    [LikelyYear]
    public DateOnly? FromOn { get; init; }

    [LikelyYear]
    public DateOnly? ToOn { get; init; }

    [StringLength(200, ErrorMessage = "Keep the note within 200 characters.")]
    public string? Note { get; init; }

    public PauseEntry ToEntry() => new()
    {
        FormKey = FormKey,
        FromOn = FromOn!.Value,
        ToOn = ToOn,
        Note = Note,
    };
}
