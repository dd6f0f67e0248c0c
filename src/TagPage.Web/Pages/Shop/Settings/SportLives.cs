using System.ComponentModel.DataAnnotations;
using TagPage.Core.Forecast;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>The numbers of one sport in the form about string lives.</summary>
public sealed record SportLives
{
    private const string Life = "Enter a number of hours between 1 and 500.";
    private const string Gauge = "Enter a diameter between 0.5 and 2 mm.";
    private const string Mains = "Enter a number of mains between 8 and 40.";
    private const string Factor = "Enter a factor between 0.25 and 4.";

    [Required(ErrorMessage = Life), Range(StartingRanges.MinLifeHours, StartingRanges.MaxLifeHours, ErrorMessage = Life)]
    public decimal? NaturalGut { get; init; }

    [Required(ErrorMessage = Life), Range(StartingRanges.MinLifeHours, StartingRanges.MaxLifeHours, ErrorMessage = Life)]
    public decimal? Multifilament { get; init; }

    [Required(ErrorMessage = Life), Range(StartingRanges.MinLifeHours, StartingRanges.MaxLifeHours, ErrorMessage = Life)]
    public decimal? SyntheticGut { get; init; }

    [Required(ErrorMessage = Life), Range(StartingRanges.MinLifeHours, StartingRanges.MaxLifeHours, ErrorMessage = Life)]
    public decimal? Polyester { get; init; }

    [Required(ErrorMessage = Life), Range(StartingRanges.MinLifeHours, StartingRanges.MaxLifeHours, ErrorMessage = Life)]
    public decimal? Aramid { get; init; }

    [Required(ErrorMessage = Gauge), Range(StartingRanges.MinGaugeMm, StartingRanges.MaxGaugeMm, ErrorMessage = Gauge)]
    public decimal? ReferenceGaugeMm { get; init; }

    [Required(ErrorMessage = Mains), Range(StartingRanges.MinManyMains, StartingRanges.MaxManyMains, ErrorMessage = Mains)]
    public int? ManyMains { get; init; }

    [Required(ErrorMessage = Factor), Range(StartingRanges.MinFactor, StartingRanges.MaxFactor, ErrorMessage = Factor)]
    public decimal? ManyMainsFactor { get; init; }

    public static SportLives Of(SportValues values) => new()
    {
        NaturalGut = (decimal)values.NaturalGut.LifeHours,
        Multifilament = (decimal)values.Multifilament.LifeHours,
        SyntheticGut = (decimal)values.SyntheticGut.LifeHours,
        Polyester = (decimal)values.Polyester.LifeHours,
        Aramid = (decimal)values.Aramid.LifeHours,
        ReferenceGaugeMm = (decimal)values.ReferenceGaugeMm,
        ManyMains = values.ManyMains,
        ManyMainsFactor = (decimal)values.ManyMainsFactor,
    };

    public SportValues ToValues() => new()
    {
        NaturalGut = new((double)NaturalGut!),
        Multifilament = new((double)Multifilament!),
        SyntheticGut = new((double)SyntheticGut!),
        Polyester = new((double)Polyester!),
        Aramid = new((double)Aramid!),
        ReferenceGaugeMm = (double)ReferenceGaugeMm!,
        ManyMains = ManyMains!.Value,
        ManyMainsFactor = (double)ManyMainsFactor!,
    };
}
