using TagPage.Core.Jobs;
using TagPage.Records.Condition;
using TagPage.Records.Jobs;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What the new job form posts.</summary>
public sealed record NewInput : JobInput
{
    public string FormKey { get; init; } = "";

    /// <summary>How the strings in the racket ended; null while they are still in.</summary>
    public BedEnd? OldEndedHow { get; init; }

    /// <summary>Null for the day the racket came in.</summary>
    public DateOnly? OldEndedOn { get; init; }

    /// <summary>Read on the strings it came with, before they are cut out; null where nothing was read.</summary>
    public decimal? OldReading { get; init; }

    public long? OldInstrumentId { get; init; }

    /// <summary>Numbers of what the price list has on top, as far as they were ticked.</summary>
    public List<long> Extras { get; init; } = [];

    public ConditionInput Condition { get; init; } = new();

    public NewJobEntry ToEntry(IReadOnlyList<PhotoEntry> photos) => Fill(new NewJobEntry
    {
        Condition = Condition.ToEntry() with { Version = 0 },
        Photos = photos,
        Extras = Extras,
        FormKey = FormKey,
        OldEndedHow = OldEndedHow,
        OldEndedOn = OldEndedOn,
        OldReading = OldReading,
        OldInstrumentId = OldInstrumentId,
    });
}
