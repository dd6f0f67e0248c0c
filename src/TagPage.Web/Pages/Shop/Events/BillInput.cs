using System.ComponentModel.DataAnnotations;
using TagPage.Records.Events;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>Whom a bill goes to.</summary>
public sealed record BillInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter whom the bill goes to.")]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? ToName { get; init; }

    [DataType(DataType.MultilineText)]
    [StringLength(200, ErrorMessage = "Keep the address within 200 characters.")]
    public string? ToAddress { get; init; }

    public bool TeamToo { get; init; }

    public EventBillEntry ToEntry(EventParty whose) => new() { FormKey = FormKey, Whose = whose, ToName = ToName!, ToAddress = ToAddress, TeamToo = TeamToo };
}
