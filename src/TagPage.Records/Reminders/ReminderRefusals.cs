using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

public sealed record NothingDue() : Refusal;

/// <summary>The client wants no reminders at all.</summary>
public sealed record RemindersUnwanted() : Refusal;

/// <summary>The client wants no reminders in this month; the owner may insist.</summary>
public sealed record QuietMonth() : Refusal(nameof(NewReminderEntry.Insist));

/// <summary>The household waits in a batch for its reminder; the owner may insist.</summary>
public sealed record ReminderWaits() : Refusal(nameof(NewReminderEntry.Insist));

/// <summary>The household was reminded recently; the owner may insist.</summary>
/// <param name="Days">The shop's own rule.</param>
public sealed record RemindedLately(int Days) : Refusal(nameof(NewReminderEntry.Insist));

/// <summary>The reminder was withdrawn or replaced by a newer one.</summary>
public sealed record ReminderVoid() : Refusal;

public sealed record ClientHasNoMail() : Refusal;

public sealed record ShopHasNoMail() : Refusal;

/// <summary>Its mail is on its way or out.</summary>
public sealed record MailedAlready() : Refusal;

/// <summary>The household has answered for every racket.</summary>
public sealed record AnsweredInFull() : Refusal;

/// <summary>The email was not given up, or its reminder is no longer valid.</summary>
public sealed record MailNotGivenUp() : Refusal;

/// <summary>The bench was faster: the answers of these rackets can no longer be changed, and nothing was saved.</summary>
public sealed record AnswersShut(IReadOnlyList<long> Rackets) : Refusal;

/// <summary>An empty batch.</summary>
public sealed record NobodyChosen() : Refusal;
