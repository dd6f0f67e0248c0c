using System.ComponentModel.DataAnnotations;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What is noted when a racket comes off the machine.</summary>
public sealed record StrungInput
{
    [Required(ErrorMessage = "Enter the day of stringing.")]
    public DateOnly? StrungOn { get; init; }

    [StringLength(60, ErrorMessage = "Keep the name within 60 characters.")]
    public string? StrungBy { get; init; }

    [StringLength(60, ErrorMessage = "Keep the machine within 60 characters.")]
    public string? Machine { get; init; }

    public decimal? Reading { get; init; }

    public long? InstrumentId { get; init; }

    /// <summary>How the previous strings ended, if nobody has noted it yet.</summary>
    public BedEnd OldEndedHow { get; init; } = BedEnd.CutOut;

    /// <summary>What the form asked about and the owner confirmed.</summary>
    public string? Confirmed { get; init; }

    public StrungEntry ToEntry() => new()
    {
        StrungOn = StrungOn!.Value,
        StrungBy = StrungBy,
        Machine = Machine,
        Reading = Reading,
        InstrumentId = InstrumentId,
        OldEndedHow = OldEndedHow,
    };
}
