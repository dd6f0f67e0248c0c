using System.ComponentModel.DataAnnotations;
using TagPage.Records.Clients;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Payers;

/// <summary>What the payer forms post.</summary>
public sealed record PayerInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter who pays.")]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? Name { get; init; }

    [PhoneNumber]
    public string? Phone { get; init; }

    [MailAddress]
    public string? Mail { get; init; }

    [StringLength(1000, ErrorMessage = "Keep the note within 1,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    public PayerEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Name = Name!,
        Phone = Phone,
        Mail = Mail,
        Note = Note,
    };
}
