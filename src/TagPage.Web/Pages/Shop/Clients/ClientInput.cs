using System.ComponentModel.DataAnnotations;
using TagPage.Records.Clients;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Clients;

/// <summary>What the client forms post.</summary>
public sealed record ClientInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    public string? Confirmed { get; init; }

    [Required(ErrorMessage = "Enter the client’s name.")]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? Name { get; init; }

    [PhoneNumber]
    public string? Phone { get; init; }

    [MailAddress]
    public string? Mail { get; init; }

    [Required(ErrorMessage = "Choose a language.")]
    [RegularExpression("[a-z]{2}", ErrorMessage = "Choose a language from the list.")]
    public string? Language { get; init; } = "en";

    public long? PayerId { get; init; }

    public bool Reminders { get; init; } = true;

    [StringLength(1000, ErrorMessage = "Keep the note within 1,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    public ClientEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Name = Name!,
        Phone = Phone,
        Mail = Mail,
        Language = Language!,
        PayerId = PayerId,
        Reminders = Reminders,
        Note = Note,
    };
}
