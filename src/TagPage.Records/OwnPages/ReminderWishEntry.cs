using TagPage.Records.Clients;

namespace TagPage.Records.OwnPages;

/// <summary>How and when a client wants to be reminded, and in which language.</summary>
public sealed record ReminderWishEntry
{
    public string Language { get; init; } = "en";
    public bool Wanted { get; init; }

    /// <summary>Null leaves it as it is.</summary>
    public RemindBy? By { get; init; }
    public int QuietMonths { get; init; }
}
