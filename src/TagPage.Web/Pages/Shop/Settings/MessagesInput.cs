using System.ComponentModel.DataAnnotations;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form about messages posts. Empty words stand for the product's own.</summary>
public sealed record MessagesInput : IValidatableObject
{
    private static readonly string[] Placeholders = ["client", "shop", "racket", "price", "hours"];

    public int Version { get; init; }

    [StringLength(120, ErrorMessage = "Keep the subject within 120 characters.")]
    public string? ReadySubject { get; init; }

    [StringLength(4000, ErrorMessage = "Keep the email within 4,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? ReadyMarkdown { get; init; }

    [StringLength(120, ErrorMessage = "Keep the subject within 120 characters.")]
    public string? ReceivedSubject { get; init; }

    [StringLength(4000, ErrorMessage = "Keep the email within 4,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? ReceivedMarkdown { get; init; }

    [StringLength(120, ErrorMessage = "Keep the subject within 120 characters.")]
    public string? NoticeSubject { get; init; }

    [StringLength(4000, ErrorMessage = "Keep the email within 4,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? NoticeText { get; init; }

    [Required(ErrorMessage = "Enter an hour from 0 to 23.")]
    [Range(0, 23, ErrorMessage = "Enter an hour from 0 to 23.")]
    public int? QuietFromHour { get; init; }

    [Required(ErrorMessage = "Enter an hour from 0 to 23.")]
    [Range(0, 23, ErrorMessage = "Enter an hour from 0 to 23.")]
    public int? QuietUntilHour { get; init; }

    public static MessagesInput Of(ShopDetails shop) => new()
    {
        Version = shop.Version,
        ReadySubject = shop.Ready.Subject,
        ReadyMarkdown = shop.Ready.Text,
        ReceivedSubject = shop.Received.Subject,
        ReceivedMarkdown = shop.Received.Text,
        NoticeSubject = shop.Notice.Subject,
        NoticeText = shop.Notice.Text,
        QuietFromHour = shop.QuietFromHour,
        QuietUntilHour = shop.QuietUntilHour,
    };

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext) =>
    [
        .. RemindersInput.Unknown(ReadySubject, nameof(ReadySubject), Placeholders),
        .. RemindersInput.Unknown(ReadyMarkdown, nameof(ReadyMarkdown), Placeholders),
        .. RemindersInput.Unknown(ReceivedSubject, nameof(ReceivedSubject), Placeholders),
        .. RemindersInput.Unknown(ReceivedMarkdown, nameof(ReceivedMarkdown), Placeholders),
        .. RemindersInput.Unknown(NoticeSubject, nameof(NoticeSubject), "client", "shop"),
        .. RemindersInput.Unknown(NoticeText, nameof(NoticeText), "client", "shop", "events"),
        .. RemindersInput.Missing(NoticeText, nameof(NoticeText), "{events}", "Put {events} where the email should say what finders did."),
    ];

    public MessagesEntry ToEntry() => new()
    {
        Version = Version,
        Ready = OwnWords.Of(ReadySubject, ReadyMarkdown),
        Received = OwnWords.Of(ReceivedSubject, ReceivedMarkdown),
        Notice = OwnWords.Of(NoticeSubject, NoticeText),
        QuietFromHour = QuietFromHour!.Value,
        QuietUntilHour = QuietUntilHour!.Value,
    };
}
