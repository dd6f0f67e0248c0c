using TagPage.Labels.Text;

namespace TagPage.Web.Labels;

/// <summary>What of typed words no font of the labels has: emoji, Korean and a few other scripts.</summary>
public static class LabelLetters
{
    public const string Hint = "Most scripts print; emoji and Korean do not";

    /// <summary>Said at the field, before anything is printed without them; null where all can be printed.</summary>
    public static string? Fault(string? text) =>
        string.IsNullOrEmpty(text) || Shaper.Shape(text).Missing is not { Count: > 0 } missing
            ? null
            : $"Labels have no letters for {string.Join(' ', missing)}. Leave {(missing.Count == 1 ? "it" : "them")} out.";
}
