namespace TagPage.Records.Storage;

/// <summary>
/// Something possible that looks like a mistake, with its data: a form asks about it once, then it is saved as typed.
/// </summary>
/// <param name="Field">The entry's property it is about.</param>
public abstract record Oddity(string Field);
