namespace TagPage.Records.Shop;

/// <summary>The owner's own words of one message; empty for the product's, in the client's language.</summary>
/// <param name="Subject">One line; an SMS has none.</param>
/// <param name="Text">Markdown in mails to clients; plain text in an SMS and around a notice.</param>
public sealed record OwnWords(string Subject = "", string Text = "")
{
    public static OwnWords Of(string? subject, string? text) => new(subject ?? "", text ?? "");
}

/// <summary>What the shop sends. A notice tells a client what a finder did.</summary>
public enum MessagePurpose { Reminder, ReminderSms, Ready, Received, Notice }
