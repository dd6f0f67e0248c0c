using TagPage.Core.Sports;

namespace TagPage.Web.Pages.Desk;

/// <summary>What of an intake's form decides what can be promised, sent while somebody types it. Nothing of it is kept.</summary>
public sealed record TypedInput
{
    public Sport? Sport { get; init; }
    public DateOnly? Day { get; init; }
    public string? NeededAt { get; init; }
    public string? NotBeforeAt { get; init; }
    public long? KeptFor { get; init; }
    public int? Minutes { get; init; }

    /// <summary>The form with that typed in.</summary>
    public IntakeInput On(IntakeInput form) => form with { Day = Day, NeededAt = NeededAt, NotBeforeAt = NotBeforeAt, KeptFor = KeptFor, Minutes = Minutes };
}
