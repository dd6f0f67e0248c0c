using TagPage.Records.Import;

namespace TagPage.Records.Events;

/// <summary>A country or club, which everybody at the desk writes as they like.</summary>
public static class TeamName
{
    /// <summary>What all spellings of a team have in common; empty for none.</summary>
    public static string KeyOf(string team) => NameKey.Of(team) is { Length: > 0 } key ? key : team.Trim();

    /// <summary>The spelling that most of its rackets have, of several the first; null for none.</summary>
    public static string? Usual(IEnumerable<string> spellings) =>
        spellings.GroupBy(spelling => spelling.Trim()).MaxBy(same => same.Count())?.Key;
}
