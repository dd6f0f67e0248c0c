using System.Text.RegularExpressions;

namespace TagPage.Web.Words;

/// <summary>What docs/data.md says is kept, why, for how long and who gets it: the same words for the manual and for the record of processing.</summary>
public sealed partial class DataFacts
{
    public DataFacts()
        : this(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "data.md")))
    {
    }

    public DataFacts(string manual)
    {
        Kept = [.. Table(manual, "| table |").Select(row => new KeptData(Names(row[0]), Plain(row[1]), Plain(row[2]), Plain(row[3])))];
        Purposes = [.. Table(manual, "| what for |").Select(row => new Purpose(Plain(row[0]), Plain(row[1]), [.. Names(row[2]).Select(Find).Distinct()], Plain(row[3])))];
    }

    public IReadOnlyList<KeptData> Kept { get; }

    public IReadOnlyList<Purpose> Purposes { get; }

    private KeptData Find(string table) => Kept.FirstOrDefault(k => k.Tables.Contains(table)) ?? throw new InvalidDataException($"docs/data.md does not say what {table} holds.");

    private static IEnumerable<string[]> Table(string text, string head) => text.Split('\n')
        .SkipWhile(line => !line.StartsWith(head, StringComparison.Ordinal)).Skip(2)
        .TakeWhile(line => line.StartsWith('|'))
        .Select(line => line.Trim().Trim('|').Split('|', StringSplitOptions.TrimEntries));

    private static string[] Names(string cell) => [.. Coded().Matches(cell).Select(m => m.Groups[1].Value)];

    /// <summary>Without what only the manual makes something of.</summary>
    private static string Plain(string cell) => Link().Replace(cell, "$1").Replace("`", "", StringComparison.Ordinal);

    [GeneratedRegex("`([a-z_]+)`")]
    private static partial Regex Coded();

    [GeneratedRegex(@"\[([^\]]+)\]\([^)]*\)")]
    private static partial Regex Link();
}

/// <param name="Tables">Where it is kept.</param>
/// <param name="What">It holds.</param>
/// <param name="Public">What of it everybody may see.</param>
/// <param name="HowLong">It is kept.</param>
public sealed record KeptData(IReadOnlyList<string> Tables, string What, string Public, string HowLong);

/// <param name="What">Something is kept for.</param>
/// <param name="Whom">It is about.</param>
/// <param name="Data">That is kept for it.</param>
/// <param name="Gets">Who gets it.</param>
public sealed record Purpose(string What, string Whom, IReadOnlyList<KeptData> Data, string Gets);
