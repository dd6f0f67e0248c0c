namespace TagPage.Records.Jobs;

/// <summary>Where a client asked for a job.</summary>
public enum AskedIn { Reminder, OwnPage }

/// <summary>What a client asks for.</summary>
/// <param name="AskedIn">In a reminder's answer or in the own page.</param>
/// <param name="AskedWords">What should be different, in their own words; empty for the same again.</param>
public sealed record JobRequest(AskedIn AskedIn, string AskedWords)
{
    /// <summary>Where the racket will be dropped off; this and the days only in the own page.</summary>
    public string DropOffWhere { get; init; } = "";

    /// <summary>The stop where they leave it and collect it; null for elsewhere.</summary>
    public long? StopId { get; init; }

    public DateOnly? DropOffBy { get; init; }

    /// <summary>When they need it back.</summary>
    public DateOnly? NeededBy { get; init; }
}
