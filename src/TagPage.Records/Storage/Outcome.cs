namespace TagPage.Records.Storage;

/// <summary>
/// What became of a write: done, absent (answer 404) or refused for a named reason.
/// What is broken throws instead.
/// </summary>
public abstract record Outcome
{
    private Outcome()
    {
    }

    /// <param name="Id">The record that was made or changed.</param>
    public sealed record Done(long Id) : Outcome;

    public sealed record Absent : Outcome;

    public sealed record Refused(Refusal Why) : Outcome;

    public static Refused Stale { get; } = new(new SavedMeanwhile());
}
