namespace TagPage.Records.Privacy;

/// <summary>The marks of whoever was forgotten, beside the backups: a machine that breaks takes its database along, and the second folder then still knows.</summary>
internal static class MarkFile
{
    private static readonly Lock One = new();

    private const int Length = 64, MostBytes = 10_000_000;

    private static string In(string folder) => Path.Combine(folder, "forgotten.txt");

    /// <summary>None where the folder has no such file; lines that are no mark say nothing.</summary>
    public static IReadOnlyList<string> Read(string folder) =>
        new FileInfo(In(folder)) is { Exists: true, Length: < MostBytes } ? [.. File.ReadLines(In(folder)).Where(IsMark)] : [];

    /// <summary>Adds what is new; nothing is ever taken out.</summary>
    public static void Add(string folder, IReadOnlyList<string> marks)
    {
        lock (One)
        {
            var known = Read(folder);
            if (marks.Except(known).ToList() is not { Count: > 0 } fresh)
                return;
            File.WriteAllLines(In(folder) + ".new", known.Concat(fresh));
            File.Move(In(folder) + ".new", In(folder), overwrite: true);
        }
    }

    private static bool IsMark(string line) => line.Length == Length && line.All(char.IsAsciiHexDigitLower);
}
