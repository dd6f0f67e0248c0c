using System.Collections.Concurrent;

namespace TagPage.Web.Tests.Cast;

/// <summary>Keeps every line the program logs, for tests that look for what must not be there.</summary>
public sealed class LogLines
{
    private readonly ConcurrentQueue<string> _lines = new();

    public IReadOnlyCollection<string> All => _lines;

    public void Add(string line) => _lines.Enqueue(line);
}
