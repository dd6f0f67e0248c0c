namespace TagPage.Web.Http.Forms;

/// <summary>What does not hold of an input, found before anything is asked of the records.</summary>
/// <param name="Field">The input's property, or empty for the form as a whole.</param>
/// <param name="Sentence">What to do about it.</param>
public sealed record FieldFault(string Field, string Sentence);
