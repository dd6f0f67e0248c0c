using TagPage.Core.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>The last day is before the first, or too many days after it.</summary>
public sealed record EventDaysUnfit(int Most) : Refusal(nameof(EventEntry.ToOn));

public sealed record EventPriceUnread(string Field, ShopDetails Shop) : Refusal(Field);

/// <summary>The event has been closed.</summary>
public sealed record EventIsClosed() : Refusal;

/// <summary>Rackets of it have not been handed out.</summary>
/// <param name="Numbers">Their desk numbers.</param>
public sealed record RacketsStillThere(IReadOnlyList<int> Numbers) : Refusal;

/// <summary>Not times like 9:00-12:30, 13:00-18:00.</summary>
public sealed record WorkHoursUnread(string Field = nameof(TechnicianEntry.Hours)) : Refusal(Field);

/// <summary>Somebody else was quicker.</summary>
/// <param name="Number">Desk number.</param>
/// <param name="State">What it is now.</param>
/// <param name="By">Who has it or had it; empty where nobody knows.</param>
public sealed record EntryMovedOn(int Number, JobState State, string By) : Refusal;

/// <summary>They have a racket on the machine: asked about, not forbidden.</summary>
public sealed record StillOnMachine() : Refusal
{
    /// <summary>The desk number they want to take.</summary>
    public int Number { get; init; }
    public long Technician { get; init; }
    public string By { get; init; } = "";

    /// <summary>The desk number of what is on their machine.</summary>
    public int First { get; init; }
}

/// <summary>No such technician at this event, or they are away.</summary>
public sealed record TechnicianNotThere(string Field = "") : Refusal(Field);

/// <summary>The racket is at the desk already.</summary>
public sealed record AtDeskAlready(int Number) : Refusal;

/// <summary>A ticket of it is open in the shop.</summary>
public sealed record OpenInShop(long Ticket) : Refusal;

/// <summary>Others came in between: it is not ready for its match any more.</summary>
public sealed record MatchOutOfReach(int Number) : Refusal;

/// <summary>It cannot be strung in the hours there are.</summary>
public sealed record NoHoursLeft() : Refusal(nameof(IntakeEntry.NeededBy));

/// <summary>A visitor has no name, or no racket was chosen.</summary>
public sealed record NobodyNamed() : Refusal($"{nameof(IntakeEntry.Visitor)}.{nameof(VisitorEntry.Name)}");

/// <summary>The day is none of the event's.</summary>
public sealed record NotAtTheEvent(string Field) : Refusal(Field);

/// <summary>The time it is needed by has passed.</summary>
public sealed record NeededInPast(DateTime NeededBy) : Refusal(nameof(IntakeEntry.NeededBy));

/// <summary>It is needed before it may be strung.</summary>
public sealed record NeededBeforeStrung(DateTime NeededBy, DateTime NotBefore) : Refusal(nameof(IntakeEntry.NeededBy));

/// <summary>Nothing to shift by, or more than a day.</summary>
public sealed record ShiftUnlikely(int Most) : Refusal("Minutes");

/// <summary>Nothing of theirs is unpaid.</summary>
public sealed record NothingToPay() : Refusal;
