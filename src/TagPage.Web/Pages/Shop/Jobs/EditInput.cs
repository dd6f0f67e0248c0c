using System.ComponentModel.DataAnnotations;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What the form to change a job posts: the order, and all that has happened since.</summary>
public sealed record EditInput : JobInput
{
    public int Version { get; init; }

    public DateOnly? StrungOn { get; init; }

    [StringLength(60, ErrorMessage = "Keep the name within 60 characters.")]
    public string? StrungBy { get; init; }

    [StringLength(60, ErrorMessage = "Keep the machine within 60 characters.")]
    public string? Machine { get; init; }

    public decimal? Reading { get; init; }

    public long? InstrumentId { get; init; }

    public DateOnly? CollectedOn { get; init; }

    public DateOnly? EndedOn { get; init; }

    public BedEnd? EndedHow { get; init; }

    /// <summary>As far as they were typed.</summary>
    public JobDays ToDays() => new()
    {
        ReceivedOn = ReceivedOn,
        PromisedFor = PromisedFor,
        StrungOn = StrungOn,
        CollectedOn = CollectedOn,
        EndedOn = EndedOn,
        EndedHow = EndedHow,
    };

    public ChangedJobEntry ToEntry() => Fill(new ChangedJobEntry
    {
        Version = Version,
        StrungOn = StrungOn,
        StrungBy = StrungBy,
        Machine = Machine,
        Reading = Reading,
        InstrumentId = InstrumentId,
        CollectedOn = CollectedOn,
        EndedOn = EndedOn,
        EndedHow = EndedHow,
    });
}
