using TagPage.Core.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>A job's days, as far as they are known: in the order in which they can happen, and none that has happened in the future.</summary>
public sealed record JobDays
{
    public DateOnly? ReceivedOn { get; init; }
    public DateOnly? PromisedFor { get; init; }
    public DateOnly? StrungOn { get; init; }
    public DateOnly? CollectedOn { get; init; }
    public DateOnly? EndedOn { get; init; }
    public BedEnd? EndedHow { get; init; }

    public IEnumerable<Refusal> Faults(DateOnly today) =>
    [
        .. DayRule.Faults(nameof(ReceivedOn), ReceivedOn, today),
        .. DayRule.Faults(nameof(StrungOn), StrungOn, today),
        .. DayRule.Faults(nameof(CollectedOn), CollectedOn, today),
        .. DayRule.Faults(nameof(EndedOn), EndedOn, today),
        .. Promised(),
        .. Order(),
        .. Ended(),
    ];

    /// <param name="opening">When the shop is open.</param>
    /// <param name="promised">The day promised so far: asked about when it was promised, and named at the ticket since. It does not stop other changes.</param>
    public IEnumerable<Oddity> Oddities(Opening opening, DateOnly? promised = null)
    {
        if (PromisedFor is { } day && day != promised && !opening.IsOpen(day))
            yield return PromisedClosed.On(day, opening);
    }

    private IEnumerable<Refusal> Promised()
    {
        if (PromisedFor < ReceivedOn)
            yield return new PromisedBeforeIn(ReceivedOn!.Value);
        if (PromisedFor > ReceivedOn?.AddYears(1))
            yield return new PromisedTooLate(ReceivedOn!.Value, PromisedFor!.Value);
    }

    private IEnumerable<Refusal> Order()
    {
        if (StrungOn < ReceivedOn)
            yield return new StrungBeforeIn(ReceivedOn!.Value);
        if (CollectedOn is not null && StrungOn is null)
            yield return new CollectedUnstrung();
        if (CollectedOn < StrungOn)
            yield return new CollectedBeforeStrung(StrungOn!.Value);
    }

    private IEnumerable<Refusal> Ended()
    {
        if (EndedOn is not null && StrungOn is null)
            yield return new EndedUnstrung();
        if (EndedOn < StrungOn)
            yield return new EndsBeforeStrung(nameof(EndedOn), StrungOn!.Value);
        if (EndedOn is null && EndedHow is not null)
            yield return new EndWithoutDay();
        if (EndedOn is not null && EndedHow is null)
            yield return new EndWithoutReason();
    }
}
