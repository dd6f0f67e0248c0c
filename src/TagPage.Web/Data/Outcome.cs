namespace TagPage.Web.Data;

/// <summary>
/// What became of a write: done, absent (answer 404) or refused with the field and the sentence to show beside it.
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

    /// <param name="Field">The input's property, or empty for the form as a whole.</param>
    /// <param name="Sentence">What to do about it.</param>
    public sealed record Refused(string Field, string Sentence) : Outcome;

    /// <summary>Somebody saved the record after this form was opened.</summary>
    public static Refused Stale { get; } = new("",
        "Somebody else saved this record while you had it open. Nothing of yours is saved yet. "
        + "Compare with the saved record, then save again to put yours in its place.");
}
