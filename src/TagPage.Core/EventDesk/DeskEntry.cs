using TagPage.Core.Sports;

namespace TagPage.Core.EventDesk;

/// <summary>A racket at the desk of an event that is not strung yet. Times are local times of the event.</summary>
/// <param name="Number">Its desk number, from 1, never given twice.</param>
/// <param name="Sport">What it is for.</param>
public sealed record DeskEntry(int Number, Sport Sport)
{
    /// <summary>Minutes to string it, where this is known better than how long the technician usually takes; above zero.</summary>
    public int? Minutes { get; init; }

    /// <summary>The match it is needed for.</summary>
    public DateTime? NeededBy { get; init; }

    /// <summary>By when its owner was told it would be ready.</summary>
    public DateTime? Promised { get; init; }

    /// <summary>It is not to be strung earlier: fresh for the match.</summary>
    public DateTime? NotBefore { get; init; }

    /// <summary>Its player stands on court without it: it goes first.</summary>
    public bool OnCourt { get; init; }

    /// <summary>A technician pulled it forward: it goes before all but those on court.</summary>
    public bool PulledForward { get; init; }

    /// <summary>The one technician who strings this player's rackets; null for anybody.</summary>
    public long? KeptFor { get; init; }

    /// <summary>On whose machine it is; null while it waits.</summary>
    public OnMachine? On { get; init; }

    /// <summary>
    /// What its owner counts on: the promise, which is the match wherever that could be promised. Always ordered by a match
    /// that could not be, it would push aside others that can be kept.
    /// </summary>
    public DateTime? Due => Promised ?? NeededBy;

    /// <summary>The match, where the desk strings it in time for that although a later time was promised; see <see cref="NeededFirst"/>.</summary>
    internal DateTime? Aim { get; init; }

    /// <summary>The same racket with all its times moved, as after rain.</summary>
    public DeskEntry Shifted(TimeSpan by) => this with
    {
        NeededBy = NeededBy + by,
        Promised = Promised + by,
        NotBefore = NotBefore + by,
    };
}

/// <summary>A racket that is being strung.</summary>
/// <param name="Technician">By whom.</param>
/// <param name="Since">When it was begun.</param>
public sealed record OnMachine(long Technician, DateTime Since);
