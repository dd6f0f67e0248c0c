using TagPage.Core.Sports;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>A racket as taken in at the desk.</summary>
public sealed record IntakeEntry
{
    public string FormKey { get; init; } = "";

    /// <summary>The racket on file; null for a visitor's.</summary>
    public long? RacketId { get; init; }

    /// <summary>A player on file whose racket is not; null for a visitor.</summary>
    public long? PlayerId { get; init; }

    /// <summary>Of the racket's tag, where it was scanned: who has it in hand may take it in.</summary>
    public string? Code { get; init; }
    public VisitorEntry Visitor { get; init; } = new();

    /// <summary>A country or a club.</summary>
    public string? Team { get; init; }

    /// <summary>Strings, tensions, price and note. Days come from the desk.</summary>
    public JobEntry Order { get; init; } = new();
    public DateTime? NeededBy { get; init; }
    public DateTime? NotBefore { get; init; }
    public bool OnCourt { get; init; }

    /// <summary>Promise the time it is needed by, whoever slips.</summary>
    public bool Insist { get; init; }
    public long? KeptFor { get; init; }
    public int? Minutes { get; init; }
    public string? Stencil { get; init; }
    public string? StencilColour { get; init; }

    /// <summary>Why nobody could keep its times, whatever else is promised; null where somebody might.</summary>
    public Refusal? Unkeepable(DateTime now) => NeededBy switch
    {
        { } need when need < now => new NeededInPast(need),
        { } need when need <= NotBefore => new NeededBeforeStrung(need, NotBefore.Value),
        _ => null,
    };
}

/// <summary>Somebody who is not on file: put there with one racket, and asked for nothing else. Of a player on file the racket alone.</summary>
public sealed record VisitorEntry
{
    public string? Name { get; init; }
    public bool Junior { get; init; }
    public Sport Sport { get; init; }
    public string? Frame { get; init; }
    public string? TapeColour { get; init; }
}
