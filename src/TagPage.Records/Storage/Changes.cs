using System.Collections.Concurrent;

namespace TagPage.Records.Storage;

/// <summary>
/// Since when each player's records stand as they are, so that what was made from them is kept for as long. What all
/// players' pages depend on, like the shop's settings, has a mark of its own. Marks only grow.
/// </summary>
public sealed class Changes
{
    /// <summary>Players remembered one by one; beyond these a change counts as one of everything.</summary>
    public const int MostPlayers = 20_000;

    private readonly ConcurrentDictionary<long, long> _ofPlayers = new();
    private readonly HashSet<long> _uncommitted = [];
    private readonly HashSet<long> _desks = [];
    private bool _allUncommitted;
    private long _now;
    private long _ofAll;

    /// <summary>
    /// An event's desk was written to, and whoever looks at it should look again. Told after the transaction, by the thread
    /// that wrote: do nothing long.
    /// </summary>
    public Action<long>? DeskChanged { get; set; }

    /// <summary>Take it before reading; what was read is at least this new.</summary>
    public long Now => Interlocked.Read(ref _now);

    /// <summary>The mark of what all players' pages depend on.</summary>
    public long OfAll => Interlocked.Read(ref _ofAll);

    /// <summary>Whether what was read of a player at <paramref name="mark"/> is still so.</summary>
    public bool IsFresh(long player, long mark) => OfAll <= mark && (!_ofPlayers.TryGetValue(player, out var at) || at <= mark);

    /// <summary>In a transaction: a row of this player's was written.</summary>
    internal void Touch(long player)
    {
        if (_uncommitted.Count < MostPlayers)
            _uncommitted.Add(player);
        else
            _allUncommitted = true;
    }

    /// <summary>In a transaction: something was written that all depend on, or nobody knows what.</summary>
    internal void TouchAll() => _allUncommitted = true;

    /// <summary>In a transaction: something at an event's desk was written.</summary>
    internal void TouchDesk(long eventId) => _desks.Add(eventId);

    /// <summary>After a transaction, also after one that failed: then what it touched may or may not be so.</summary>
    internal void Publish()
    {
        PublishPlayers();
        if (_desks.Count == 0)
            return;
        long[] desks = [.. _desks];
        _desks.Clear();
        foreach (var desk in desks)
            DeskChanged?.Invoke(desk);
    }

    private void PublishPlayers()
    {
        if (!_allUncommitted && _uncommitted.Count == 0)
            return;
        var mark = Interlocked.Increment(ref _now);
        if (_allUncommitted || _ofPlayers.Count + _uncommitted.Count > MostPlayers)
        {
            Interlocked.Exchange(ref _ofAll, mark);
            _ofPlayers.Clear();
        }
        else
        {
            foreach (var player in _uncommitted)
                _ofPlayers[player] = mark;
        }
        _uncommitted.Clear();
        _allUncommitted = false;
    }
}
