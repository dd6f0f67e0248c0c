using TagPage.Core.EventDesk;
using TagPage.Records.Events;

namespace TagPage.Web.Pages.Desk;

/// <summary>What can be promised for what a form says, before anything is sent.</summary>
/// <param name="desk">As it stands.</param>
/// <param name="planned">The racket without any times.</param>
/// <param name="wished">The form; what does not fit counts as not typed.</param>
public sealed class IntakePreview(Core.EventDesk.Desk desk, DeskEntry planned, IntakeEntry wished)
{
    private readonly DeskEntry _asked = planned with
    {
        NotBefore = wished.NotBefore,
        KeptFor = wished.KeptFor,
        Minutes = wished.Minutes is >= IntakeInput.LeastMinutes and <= IntakeInput.MostMinutes ? wished.Minutes : null,
    };

    /// <summary>Without a match; null where the hours do not suffice.</summary>
    public DateTime? Earliest => desk.EarliestPromise(_asked);

    /// <summary>For one whose player is on court.</summary>
    public WhatIf IfOnCourt => WhatIf.Of(desk, _asked with { OnCourt = true });

    /// <summary>The match that was typed; null for none, or one that nobody could reach.</summary>
    public DateTime? Wish => wished.Unkeepable(desk.Now) is null ? wished.NeededBy : null;

    /// <summary>For the match that was typed.</summary>
    public WhatIf? IfNeeded => Wish is { } wish ? WhatIf.Of(desk, _asked with { NeededBy = wish }) : null;
}
