using TagPage.Records.Outbox;

namespace TagPage.Records.Reminders;

/// <summary>How a reminder left the shop.</summary>
public enum SentHow { Mail, MailApp, SmsApp, Copied, Phone }

/// <summary>A reminder as the owner sees it.</summary>
public sealed record ReminderRow
{
    public long Id { get; init; }
    public string Secret { get; init; } = "";
    public string StopSecret { get; init; } = "";
    public long ClientId { get; init; }
    public string Client { get; init; } = "";
    public string Language { get; init; } = "en";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public bool Reminders { get; init; }
    public DateTimeOffset MadeAt { get; init; }
    public DateTimeOffset ExpiresAt { get; init; }
    public SentHow? SentHow { get; init; }
    public DateTimeOffset? SentAt { get; init; }
    public bool Discarded { get; init; }
    public bool Replaced { get; init; }
    public int Rackets { get; init; }
    public int Answered { get; init; }

    /// <summary>There is an answer for every racket.</summary>
    public bool IsAnswered => Answered >= Rackets;

    /// <summary>Of the mail that was queued last.</summary>
    public long? OutboxId { get; init; }
    public string? OutboxState { get; init; }
    public bool MaybeSent { get; init; }
    public string? LastError { get; init; }
    public DateTimeOffset? NotBefore { get; init; }
    public int Tries { get; init; }
}

/// <summary>A mail that is on its way, was given up, or may have gone out.</summary>
public sealed record MailRow
{
    public long Id { get; init; }
    public MailKind Kind { get; init; }
    public string? ToName { get; init; }
    public string Subject { get; init; } = "";
    public string State { get; init; } = "";
    public bool MaybeSent { get; init; }
    public int Tries { get; init; }
    public string LastError { get; init; } = "";
    public DateTimeOffset NotBefore { get; init; }
    public DateTimeOffset MadeAt { get; init; }

    /// <summary>False for a reminder that nobody needs any more: taken back, replaced, answered in full or unwanted.</summary>
    public bool StillHolds { get; init; }

    public bool CanRetry => State is "Failed" or "MaybeSent" && StillHolds;
}
