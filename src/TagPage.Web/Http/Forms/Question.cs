namespace TagPage.Web.Http.Forms;

/// <summary>Something possible that looks like a mistake: asked about once, then saved as typed.</summary>
/// <param name="Field">The input's property.</param>
/// <param name="Sentence">What is odd about it, as a whole sentence.</param>
public sealed record Question(string Field, string Sentence);
