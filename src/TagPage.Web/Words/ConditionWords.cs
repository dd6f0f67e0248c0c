using TagPage.Records.Condition;

namespace TagPage.Web.Words;

/// <summary>What a racket looked like, in words.</summary>
internal static class ConditionWords
{
    /// <summary>“grommets worn: two split at the top”.</summary>
    public static string Of(PartNote note) =>
        EnglishNames.Of(note.Part).ToLowerInvariant() + (note.State is { } state ? $" {EnglishNames.Of(state)}" : "") + (note.Words.Length > 0 ? $": {note.Words}" : "");

    /// <summary>All of it in a line; empty where nothing was noted.</summary>
    public static string Of(ConditionRow row) => string.Join(" · ", row.Parts.Select(Of).Concat(row.Photos.Count == 0 ? [] : [Photos(row.Photos.Count)]));

    public static string Photos(int count) => count == 1 ? "1 photo" : $"{count} photos";
}
