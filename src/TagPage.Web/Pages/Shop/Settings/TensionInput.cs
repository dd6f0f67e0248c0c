using System.ComponentModel.DataAnnotations;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form about tension loss and breaks posts.</summary>
public sealed record TensionInput
{
    private const string Trust = "Enter a number between 1 and 50.";
    private const string Noise = "Enter percentage points between 0.1 and 20.";
    private const string BadShape = "Enter a number between 1 and 10.";
    private const string BadOneIn = "Enter a number between 2 and 100.";
    private const string Breaks = "Enter a whole number between 1 and 20.";
    private const string Differ = "Enter a number between 0.05 and 2.";

    public int Version { get; init; }

    public MaterialLoss NaturalGut { get; init; } = new();
    public MaterialLoss Multifilament { get; init; } = new();
    public MaterialLoss SyntheticGut { get; init; } = new();
    public MaterialLoss Polyester { get; init; } = new();
    public MaterialLoss Aramid { get; init; } = new();

    [Required(ErrorMessage = Trust), Range(StartingRanges.MinTrust, StartingRanges.MaxTrust, ErrorMessage = Trust)]
    public decimal? SettlingTrust { get; init; }

    [Required(ErrorMessage = Trust), Range(StartingRanges.MinTrust, StartingRanges.MaxTrust, ErrorMessage = Trust)]
    public decimal? PerHourTrust { get; init; }

    [Required(ErrorMessage = Noise), Range(StartingRanges.MinNoise, StartingRanges.MaxNoise, ErrorMessage = Noise)]
    public decimal? ReadingNoise { get; init; }

    [Required(ErrorMessage = BadShape), Range(StartingRanges.MinShape, StartingRanges.MaxShape, ErrorMessage = BadShape)]
    public decimal? Shape { get; init; }

    [Required(ErrorMessage = BadOneIn), Range(StartingRanges.MinOneIn, StartingRanges.MaxOneIn, ErrorMessage = BadOneIn)]
    public decimal? OneIn { get; init; }

    [Required(ErrorMessage = Breaks), Range(StartingRanges.MinFewestBreaks, StartingRanges.MaxFewestBreaks, ErrorMessage = Breaks)]
    public int? FewestBreaks { get; init; }

    [Required(ErrorMessage = Differ), Range(StartingRanges.MinWearSpread, StartingRanges.MaxWearSpread, ErrorMessage = Differ)]
    public decimal? LifeSpread { get; init; }

    [Required(ErrorMessage = Differ), Range(StartingRanges.MinWearSpread, StartingRanges.MaxWearSpread, ErrorMessage = Differ)]
    public decimal? ShapeSpread { get; init; }

    public static TensionInput Of(StartingValues values, int version) => new()
    {
        Version = version,
        NaturalGut = MaterialLoss.Of(values.Tension.NaturalGut),
        Multifilament = MaterialLoss.Of(values.Tension.Multifilament),
        SyntheticGut = MaterialLoss.Of(values.Tension.SyntheticGut),
        Polyester = MaterialLoss.Of(values.Tension.Polyester),
        Aramid = MaterialLoss.Of(values.Tension.Aramid),
        SettlingTrust = (decimal)values.Tension.Spread.SettlingTrust,
        PerHourTrust = (decimal)values.Tension.Spread.PerHourTrust,
        ReadingNoise = (decimal)values.Tension.Spread.ReadingNoise,
        Shape = (decimal)values.Wear.Shape,
        OneIn = (decimal)values.Wear.OneIn,
        FewestBreaks = values.Wear.FewestBreaks,
        LifeSpread = (decimal)values.Wear.LifeSpread,
        ShapeSpread = (decimal)values.Wear.ShapeSpread,
    };

    /// <summary>The values with these in place of theirs.</summary>
    public StartingValues On(StartingValues values) => values with
    {
        Tension = new TensionValues
        {
            NaturalGut = NaturalGut.ToValues(),
            Multifilament = Multifilament.ToValues(),
            SyntheticGut = SyntheticGut.ToValues(),
            Polyester = Polyester.ToValues(),
            Aramid = Aramid.ToValues(),
            Spread = new LossSpread { SettlingTrust = (double)SettlingTrust!, PerHourTrust = (double)PerHourTrust!, ReadingNoise = (double)ReadingNoise! },
        },
        Wear = new WearValues
        {
            LifeSpread = (double)LifeSpread!,
            Shape = (double)Shape!,
            ShapeSpread = (double)ShapeSpread!,
            OneIn = (double)OneIn!,
            FewestBreaks = FewestBreaks!.Value,
        },
    };
}
