using System.ComponentModel.DataAnnotations;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Records.Rackets;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>What the racket forms post.</summary>
public sealed record RacketInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    public string? Confirmed { get; init; }

    [Required(ErrorMessage = "Enter the racket’s number.")]
    [Range(1, RacketEntry.LastNumber, ErrorMessage = "Enter a number between 1 and 999.")]
    public int? Number { get; init; }

    /// <summary>Of a new racket: how many of the same there are.</summary>
    [Required(ErrorMessage = "Enter how many there are.")]
    [Range(1, RacketEntry.MostSame, ErrorMessage = "Enter a number between 1 and 12.")]
    public int? Same { get; init; } = 1;

    [Required(ErrorMessage = "Choose how the racket is used.")]
    public RacketState? State { get; init; } = RacketState.InTurn;

    [Required(ErrorMessage = "Choose the sport.")]
    public Sport? Sport { get; init; }

    [StringLength(80, ErrorMessage = "Keep the frame within 80 characters.")]
    public string? Frame { get; init; }

    [StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
    public string? TapeColour { get; init; }

    [Range(20.0, 1500.0, ErrorMessage = "Enter a head size between 20 and 1,500.")]
    public decimal? HeadSize { get; init; }

    [RegularExpression("in2|cm2", ErrorMessage = "Choose in² or cm².")]
    public string? HeadSizeUnit { get; init; } = "in2";

    [Range(8, 40, ErrorMessage = "Enter 8 to 40 mains.")]
    public int? PatternMains { get; init; }

    [Range(8, 40, ErrorMessage = "Enter 8 to 40 crosses.")]
    public int? PatternCrosses { get; init; }

    [Range(SportFacts.MinLengthMm / 10.0, SportFacts.MaxLengthMm / 10.0, ErrorMessage = "Enter a length between 40 and 80 cm.")]
    public decimal? LengthCm { get; init; }

    [StringLength(40, ErrorMessage = "Keep the grip within 40 characters.")]
    public string? Grip { get; init; }

    [LikelyYear]
    public DateOnly? OwnDate { get; init; }

    [StringLength(200, ErrorMessage = "Keep the reason within 200 characters.")]
    public string? OwnDateNote { get; init; }

    [StringLength(1000, ErrorMessage = "Keep the note within 1,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    public RacketEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Number = Number!.Value,
        Same = Same!.Value,
        State = State!.Value,
        Sport = Sport!.Value,
        Frame = Frame,
        TapeColour = TapeColour,
        HeadSize = HeadSize,
        HeadSizeUnit = HeadSizeUnit,
        PatternMains = PatternMains,
        PatternCrosses = PatternCrosses,
        LengthCm = LengthCm,
        Grip = Grip,
        OwnDate = OwnDate,
        OwnDateNote = OwnDateNote,
        Note = Note,
    };
}
