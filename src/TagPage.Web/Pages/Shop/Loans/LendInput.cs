using System.ComponentModel.DataAnnotations;
using TagPage.Records.Loans;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Loans;

/// <summary>What the form to lend a racket posts.</summary>
public sealed record LendInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Choose one of your own rackets.")]
    public long? RacketId { get; init; }

    [Required(ErrorMessage = "Enter the day it was lent.")]
    [LikelyYear]
    public DateOnly? LentOn { get; init; }

    [LikelyYear]
    public DateOnly? DueOn { get; init; }

    [StringLength(200, ErrorMessage = "Keep the note within 200 characters.")]
    public string? Note { get; init; }

    public LoanEntry ToEntry() => new() { FormKey = FormKey, RacketId = RacketId!.Value, LentOn = LentOn!.Value, DueOn = DueOn, Note = Note };
}
