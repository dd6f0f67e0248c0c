namespace TagPage.Records.Reminders;

/// <summary>A new reminder as entered.</summary>
public sealed record NewReminderEntry
{
    public string FormKey { get; init; } = "";

    /// <summary>Remind even though the household was reminded recently.</summary>
    public bool Insist { get; init; }

    /// <summary>Nothing is sent: the client said on the phone what to do.</summary>
    public bool ByPhone { get; init; }
}
