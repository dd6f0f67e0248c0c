namespace TagPage.Web.Csv;

/// <summary>One thing to put right in a file.</summary>
/// <param name="File">As it was sent: clients.csv.</param>
/// <param name="Line">Counted from 1, the header included; 0 for the file as a whole.</param>
/// <param name="Column">Its name in the header, or empty for the whole line.</param>
/// <param name="Sentence">What to do about it.</param>
public sealed record Problem(string File, int Line, string Column, string Sentence)
{
    /// <summary>clients.csv:12:phone: Write …</summary>
    public override string ToString() =>
        File + (Line > 0 ? $":{Line}" : "") + (Column.Length > 0 ? $":{Column}" : "") + ": " + Sentence;
}
