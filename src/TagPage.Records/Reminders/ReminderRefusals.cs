using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

public sealed record NothingDue() : Refusal;

/// <summary>The client wants no reminders at all.</summary>
public sealed record RemindersUnwanted() : Refusal;

/// <summary>The client wants no reminders in this month; the owner may insist.</summary>
public sealed record QuietMonth() : Refusal(nameof(NewReminderEntry.Insist));

/// <summary>The household was reminded a short while ago; the owner may insist.</summary>
/// <param name="Days">The shop's own rule.</param>
public sealed record RemindedLately(int Days) : Refusal(nameof(NewReminderEntry.Insist));

/// <summary>The reminder was taken back or replaced by a newer one.</summary>
public sealed record ReminderVoid() : Refusal;

public sealed record ClientHasNoMail() : Refusal;

public sealed record ShopHasNoMail() : Refusal;

/// <summary>Its mail is on its way or out.</summary>
public sealed record MailedAlready() : Refusal;

/// <summary>The mail is not one that was given up, or its reminder does not hold any more.</summary>
public sealed record MailNotGivenUp() : Refusal;

/// <summary>A batch of nobody.</summary>
public sealed record NobodyChosen() : Refusal;
