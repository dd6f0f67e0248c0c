namespace TagPage.Web.Http.Limits;

/// <summary>
/// Lets each key take a number at once and gives them back steadily, one by one, so that whoever has taken all waits
/// moments and not the whole window. In memory only: a restart forgets. When full, it forgets the keys that took least.
/// </summary>
/// <param name="clock">Used as a stopwatch, so that setting the machine's clock neither frees nor locks out anybody.</param>
/// <param name="most">How many a key has at once, and how many it is given back within <paramref name="window"/>.</param>
/// <param name="window">In which all are given back.</param>
/// <param name="capacity">How many keys are remembered at most.</param>
public sealed class SteadyLimit(TimeProvider clock, int most, TimeSpan window, int capacity = 20_000)
{
    private readonly Lock _lock = new();
    private readonly Dictionary<string, Taken> _keys = new(StringComparer.Ordinal);

    /// <param name="Owed">Until all is given back, as of <paramref name="At"/>.</param>
    /// <param name="At">When the last was taken.</param>
    private readonly record struct Taken(TimeSpan Owed, long At);

    private TimeSpan Each => window / most;

    /// <summary>Takes one, as long as there are any.</summary>
    public void Take(string key)
    {
        lock (_lock)
        {
            if (_keys.Count >= capacity && !_keys.ContainsKey(key))
                MakeRoom();
            _keys[key] = new Taken(Least(window, Owed(key) + Each), clock.GetTimestamp());
        }
    }

    /// <summary>How long until the key has one again; zero where it has one now.</summary>
    public TimeSpan Wait(string key)
    {
        lock (_lock)
            return Most(TimeSpan.Zero, Owed(key) + Each - window);
    }

    /// <summary>Whether the key took one within the last window.</summary>
    public bool HasTaken(string key)
    {
        lock (_lock)
            return _keys.TryGetValue(key, out var taken) && IsRecent(taken);
    }

    private TimeSpan Owed(string key) => _keys.TryGetValue(key, out var taken) ? Owed(taken) : TimeSpan.Zero;

    private TimeSpan Owed(Taken taken) => Most(TimeSpan.Zero, taken.Owed - clock.GetElapsedTime(taken.At));

    private bool IsRecent(Taken taken) => clock.GetElapsedTime(taken.At) < window;

    private void MakeRoom()
    {
        var fewest = _keys.OrderBy(k => IsRecent(k.Value)).ThenBy(k => Owed(k.Value)).ThenBy(k => k.Value.At).Select(k => k.Key);
        foreach (var key in fewest.Take(1 + capacity / 10).ToList())
            _keys.Remove(key);
    }

    private static TimeSpan Least(TimeSpan one, TimeSpan other) => one < other ? one : other;

    private static TimeSpan Most(TimeSpan one, TimeSpan other) => one > other ? one : other;
}
