using TagPage.Core.Forecast;

namespace TagPage.Records.DueDates;

/// <summary>A racket in play and strung, with no job at the bench, and not put off by its client.</summary>
public sealed record DueRow : ForecastRow
{
    public int Number { get; init; }
    public string Frame { get; init; } = "";
    public string TapeColour { get; init; } = "";
    public string Player { get; init; } = "";
    public long ClientId { get; init; }
    public string Client { get; init; } = "";
    public string? Phone { get; init; }

    /// <summary>Whether the client wants reminders.</summary>
    public bool Reminders { get; init; }

    /// <summary>The last reminder to the client, or null.</summary>
    public long? ReminderId { get; init; }
    public DateTimeOffset? RemindedAt { get; init; }

    /// <summary>Whether that reminder has left the shop, as far as anybody knows.</summary>
    public bool IsSent { get; init; }

    /// <summary>Whether its email has not been taken yet: it waits or is tried again.</summary>
    public bool IsOnItsWay { get; init; }

    /// <summary>Whether it was sent, be it that its email was given up later.</summary>
    public bool IsHandedOver { get; init; }

    /// <summary>The batch of reminders under way in which the client waits, or null.</summary>
    public long? BatchId { get; init; }

    /// <summary>Whether the client has brought a racket lately.</summary>
    public bool Seen { get; init; }
}

/// <summary>A racket that is due, with the reasons.</summary>
public sealed record DueRacket(DueRow Racket, RestringBy By);

/// <summary>All that is due of one client, the most urgent first.</summary>
public sealed record Household(IReadOnlyList<DueRacket> Rackets)
{
    public DueRow Client => Rackets[0].Racket;

    /// <summary>Days left of the most urgent one, negative when past.</summary>
    public int DaysLeft => Rackets[0].By.DaysLeft!.Value;
}
