namespace TagPage.Records.Readings;

/// <summary>What a household measured on their phone.</summary>
public sealed record Pitch
{
    public DateOnly TakenOn { get; init; }

    /// <summary>In Hz.</summary>
    public double Value { get; init; }
}
