namespace TagPage.Records.Events;

/// <summary>Who pays at an event: a player, or a country or club. The other one is null.</summary>
public sealed record EventParty
{
    private EventParty()
    {
    }

    public long? PlayerId { get; private init; }

    /// <summary>As it was written down at the desk.</summary>
    public string? Team { get; private init; }

    public static EventParty Player(long id) => new() { PlayerId = id };

    public static EventParty Of(string team) => new() { Team = team };
}

/// <summary>A bill as entered.</summary>
public sealed record EventBillEntry
{
    public string FormKey { get; init; } = "";
    public required EventParty Whose { get; init; }
    public string ToName { get; init; } = "";

    /// <summary>Line by line.</summary>
    public string? ToAddress { get; init; }

    /// <summary>A player pays for what was taken in for a country or club too.</summary>
    public bool TeamToo { get; init; }
}
