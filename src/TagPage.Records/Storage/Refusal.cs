namespace TagPage.Records.Storage;

/// <summary>
/// A named reason why something was not saved, with the data that goes with it. Each audience puts it into its own words.
/// </summary>
/// <param name="Field">The entry's property it is about, or empty for the entry as a whole.</param>
public abstract record Refusal(string Field = "");

/// <summary>Somebody saved the record after this form was opened.</summary>
public sealed record SavedMeanwhile() : Refusal;

/// <summary>The form's key was never given out.</summary>
public sealed record FormKeyUnknown() : Refusal;
