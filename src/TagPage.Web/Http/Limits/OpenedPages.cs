using TagPage.Core.Tags;

namespace TagPage.Web.Http.Limits;

/// <summary>
/// Remembers which tags' pages were opened from which source. In memory only, the newest ones; sources as a number that
/// means nothing outside this run of the program.
/// </summary>
public sealed class OpenedPages
{
    /// <summary>Up to twice as many are remembered.</summary>
    public const int Most = 10_000;

    private readonly Lock _lock = new();
    private HashSet<(int Source, TagCode Code)> _newer = [], _older = [];

    public void Add(string source, TagCode code)
    {
        lock (_lock)
        {
            if (_newer.Count >= Most)
                (_older, _newer) = (_newer, []);
            _newer.Add((Number(source), code));
        }
    }

    public bool Has(string source, TagCode code)
    {
        lock (_lock)
            return _newer.Contains((Number(source), code)) || _older.Contains((Number(source), code));
    }

    /// <summary>Of .NET's hash, keyed anew at each start. Two sources with the same number only share what they opened.</summary>
    private static int Number(string source) => source.GetHashCode(StringComparison.Ordinal);
}
