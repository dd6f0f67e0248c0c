using TagPage.Core.Strings;
using TagPage.Records.Import;
using TagPage.Records.StringingLists;
using TagPage.Records.Strings;

namespace TagPage.Web.StringingLists;

/// <summary>The strings of a list: those of the catalogue by name and gauge, others as the owner said.</summary>
internal sealed class ListStrings
{
    /// <summary>Stands in the catalogue for what a list does not name.</summary>
    public const string Unknown = "String not known";

    private readonly Dictionary<string, ListString?> _known = [];
    private readonly Dictionary<string, (StringText Text, int Lines)> _asked = [];
    private readonly IReadOnlyList<StringStore.Row> _catalogue;
    private readonly IReadOnlyDictionary<string, StringAnswer> _answers;

    public ListStrings(IReadOnlyList<StringStore.Row> catalogue, IReadOnlyDictionary<string, StringAnswer> answers, IEnumerable<ReadLine> lines)
    {
        (_catalogue, _answers) = (catalogue, answers);
        foreach (var text in lines.SelectMany(line => line.Mains.Key == line.Crosses.Key ? [line.Mains] : new[] { line.Mains, line.Crosses }))
            Take(text);
    }

    public IReadOnlyList<StringQuestion> Questions => [.. _asked.Select(a => new StringQuestion(a.Key, a.Value.Text, a.Value.Lines)).OrderByDescending(q => q.Lines).ThenBy(q => q.Text.Name, StringComparer.OrdinalIgnoreCase)];

    public IReadOnlySet<string> Open => _asked.Keys.Where(key => _known[key] is null).ToHashSet();

    /// <summary>Null until it is answered.</summary>
    public ListString? Of(StringText text) => _known[text.Key];

    private void Take(StringText text)
    {
        if (_asked.TryGetValue(text.Key, out var asked))
            _asked[text.Key] = (asked.Text, asked.Lines + 1);
        if (_known.ContainsKey(text.Key))
            return;
        _known[text.Key] = OnFile(text);
        if (_known[text.Key] is not null)
            return;
        _asked[text.Key] = (text, 1);
        _known[text.Key] = Answered(text);
    }

    private ListString? OnFile(StringText text) =>
        text.IsKnown && _catalogue.Where(kind => NameKey.Of(kind.Name) == NameKey.Of(text.Name) && (text.GaugeMm is null || kind.GaugeMm == text.GaugeMm)).ToList() is [var only] ? Of(only) : null;

    private ListString? Answered(StringText text)
    {
        if (!_answers.TryGetValue(text.Key, out var answer))
            return null;
        if (answer.KindId is { } id)
            return _catalogue.FirstOrDefault(kind => kind.Id == id) is { } kind ? Of(kind) : null;
        if (answer is not { Material: { } material, GaugeMm: { } gauge })
            return null;
        // A string of this name and gauge that is on file has its own material.
        var name = text.IsKnown ? text.Name : Unknown;
        return _catalogue.FirstOrDefault(kind => kind.Name.Equals(name, StringComparison.OrdinalIgnoreCase) && kind.GaugeMm == gauge) is { } same ? Of(same)
            : new ListString { Name = name, Material = material, GaugeMm = gauge };
    }

    private static ListString Of(StringStore.Row kind) => new() { Name = kind.Name, Material = kind.Material, GaugeMm = kind.GaugeMm };

    /// <summary>A material that a name's own words say (common practice); null where they say none, or several.</summary>
    public static Material? Guess(string name)
    {
        var words = HeadingWords.Plain(name);
        var found = Spoken.Where(s => words.Contains(s.Word, StringComparison.Ordinal)).Select(s => s.Material).Distinct().ToList();
        return found is [var only] ? only : null;
    }

    private static readonly (string Word, Material Material)[] Spoken =
        [("poly", Material.Polyester), ("multi", Material.Multifilament), ("natural gut", Material.NaturalGut), ("synthetic", Material.SyntheticGut), ("syn gut", Material.SyntheticGut), ("nylon", Material.SyntheticGut), ("aramid", Material.Aramid)];
}
