using TagPage.Core.EventDesk;

namespace TagPage.Records.Events;

/// <summary>What would become of a racket at the desk, before it is kept.</summary>
/// <param name="Promise">What can be promised; null where the hours do not suffice.</param>
/// <param name="Slips">Who would be late if the time it is needed by were promised.</param>
/// <param name="Hurt">Who would be late even with what can be promised: it goes before them.</param>
public sealed record WhatIf(DateTime? Promise, IReadOnlyList<Slip> Slips, IReadOnlyList<Slip> Hurt)
{
    /// <param name="desk">As it stands.</param>
    /// <param name="planned">A racket more, or one of the desk's with other times; without a promise.</param>
    public static WhatIf Of(Desk desk, DeskEntry planned)
    {
        var promise = desk.PromiseFor(planned);
        return new WhatIf(promise, planned.NeededBy is { } wish ? desk.Slips(planned with { Promised = wish }) : [],
            promise is null ? [] : desk.Slips(planned with { Promised = promise }));
    }

    /// <summary>Whether there is something to choose: the wish cannot be promised, or others would be late.</summary>
    public bool Asks(DateTime? wish) => Hurt.Count > 0 || (wish is not null && Promise != wish);
}
