using System.ComponentModel.DataAnnotations;
using System.Text.RegularExpressions;
using TagPage.Records.Shop;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form about reminders posts. Empty words stand for the product's own.</summary>
public sealed partial record RemindersInput : IValidatableObject
{
    public int Version { get; init; }

    [Required(ErrorMessage = "Enter a number of days; 0 for no limit.")]
    [Range(0, 365, ErrorMessage = "Enter a number of days from 0 to 365.")]
    public int? DaysBetween { get; init; }

    [StringLength(120, ErrorMessage = "Keep the subject within 120 characters.")]
    public string? Subject { get; init; }

    [StringLength(4000, ErrorMessage = "Keep the email within 4,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Markdown { get; init; }

    [StringLength(400, ErrorMessage = "Keep the SMS within 400 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Sms { get; init; }

    public static RemindersInput Of(ShopDetails shop) => new()
    {
        Version = shop.Version,
        DaysBetween = shop.DaysBetweenReminders,
        Subject = shop.Reminder.Subject,
        Markdown = shop.Reminder.Text,
        Sms = shop.ReminderSms.Text,
    };

    public ShopDetails On(ShopDetails shop) => shop with { Reminder = OwnMail, ReminderSms = OwnSms };

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext) =>
    [
        .. Unknown(Subject, nameof(Subject), "client", "shop"),
        .. Unknown(Markdown, nameof(Markdown), ReminderWords.Placeholders),
        .. Unknown(Sms, nameof(Sms), ReminderWords.Placeholders),
        .. Missing(Markdown, nameof(Markdown), "{link}", "Put {link} where the household’s link goes."),
        .. Missing(Markdown, nameof(Markdown), "{stop}", "Put {stop} where the link to stop reminders goes: everybody must be able to find it."),
        .. Missing(Sms, nameof(Sms), "{link}", "Put {link} where the household’s link goes."),
    ];

    internal static IEnumerable<ValidationResult> Unknown(string? text, string field, params string[] known)
    {
        if (Braces().Matches(text ?? "").Select(m => m.Groups[1].Value).FirstOrDefault(name => !known.Contains(name)) is { } name)
            yield return new($"{{{name}}} means nothing here. You can use: {string.Join(", ", known.Select(k => $"{{{k}}}"))}.", [field]);
    }

    internal static IEnumerable<ValidationResult> Missing(string? text, string field, string placeholder, string sentence)
    {
        if (text is not null && !text.Contains(placeholder, StringComparison.Ordinal))
            yield return new(sentence, [field]);
    }

    [GeneratedRegex(@"\{(\w*)\}")]
    private static partial Regex Braces();

    public RemindersEntry ToEntry() => new()
    {
        Version = Version,
        DaysBetween = DaysBetween!.Value,
        Mail = OwnMail,
        Sms = OwnSms,
    };

    private OwnWords OwnMail => OwnWords.Of(Subject, Markdown);

    private OwnWords OwnSms => OwnWords.Of(null, Sms);
}
