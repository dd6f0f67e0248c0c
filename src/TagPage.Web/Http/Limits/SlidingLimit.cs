namespace TagPage.Web.Http.Limits;

/// <summary>
/// Counts what each key (a source, an account, a tag) did within a sliding window. In memory only: a
/// restart forgets. When full, it forgets the keys with the fewest takes first, so that made-up keys cannot push out a busy one.
/// </summary>
/// <param name="clock">Used as a stopwatch, so that setting the machine's clock frees nobody.</param>
/// <param name="most">How many takes a key has within <paramref name="window"/>.</param>
/// <param name="window">How long a take counts.</param>
/// <param name="capacity">How many keys are remembered at most.</param>
public sealed class SlidingLimit(TimeProvider clock, int most, TimeSpan window, int capacity = 10_000)
{
    private readonly Lock _lock = new();
    private readonly Dictionary<string, Queue<long>> _takes = new(StringComparer.Ordinal);

    /// <summary>Takes one; false, and nothing taken, where the key has none left.</summary>
    public bool TryTake(string key)
    {
        lock (_lock)
        {
            var takes = Current(key) ?? Begin(key);
            if (takes.Count >= most)
                return false;
            takes.Enqueue(clock.GetTimestamp());
            return true;
        }
    }

    /// <summary>True where the next take would be refused.</summary>
    public bool IsSpent(string key) => Count(key) >= most;

    /// <summary>Takes of this key within the window that ends now.</summary>
    public int Count(string key)
    {
        lock (_lock)
            return Current(key)?.Count ?? 0;
    }

    /// <summary>How long until the key has a take again; zero where it has one now.</summary>
    public TimeSpan RetryAfter(string key)
    {
        lock (_lock)
            return Current(key) is { } takes && takes.Count >= most ? window - clock.GetElapsedTime(takes.Peek()) : TimeSpan.Zero;
    }

    /// <summary>The newest take of this key does not count.</summary>
    public void GiveBack(string key)
    {
        lock (_lock)
            if (Current(key) is { Count: > 0 } takes)
                _takes[key] = new Queue<long>(takes.SkipLast(1));
    }

    public void Forget(string key)
    {
        lock (_lock)
            _takes.Remove(key);
    }

    private Queue<long>? Current(string key)
    {
        if (!_takes.TryGetValue(key, out var takes))
            return null;
        DropOld(takes);
        return takes;
    }

    private Queue<long> Begin(string key)
    {
        if (_takes.Count >= capacity)
            MakeRoom();
        return _takes[key] = new Queue<long>();
    }

    private void MakeRoom()
    {
        foreach (var takes in _takes.Values)
            DropOld(takes);
        var fewest = _takes.OrderBy(t => t.Value.Count).ThenBy(t => t.Value.LastOrDefault()).Select(t => t.Key);
        foreach (var key in fewest.Take(1 + capacity / 10).ToList())
            _takes.Remove(key);
    }

    private void DropOld(Queue<long> takes)
    {
        while (takes.TryPeek(out var at) && clock.GetElapsedTime(at) >= window)
            takes.Dequeue();
    }
}
