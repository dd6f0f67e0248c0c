using System.ComponentModel.DataAnnotations;
using TagPage.Records.Labels;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>What the form about labels posts. Lengths in mm.</summary>
public sealed record SettingsInput : IValidatableObject
{
    private const string Length = "Enter a length in mm from {1} to {2}.";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter the tape’s width in mm, like 12."), Range(6.0, 50.0, ErrorMessage = Length)]
    public decimal? TapeMm { get; init; }

    [Required(ErrorMessage = "Enter the margin in mm, like 1."), Range(0.0, 5.0, ErrorMessage = Length)]
    public decimal? MarginMm { get; init; }

    [Required(ErrorMessage = "Enter the printer’s dots an inch, like 180."), Range(100, 1200, ErrorMessage = "Enter a number from 100 to 1200.")]
    public int? Dpi { get; init; }

    [Required(ErrorMessage = "Enter a length in mm, like 80."), Range(30.0, 400.0, ErrorMessage = Length)]
    public decimal? LongestMm { get; init; }

    [Required(ErrorMessage = "Enter a size in points, like 10."), Range(5.0, 40.0, ErrorMessage = "Enter a size from {1} to {2} points.")]
    public decimal? LargestPoints { get; init; }

    [Required(ErrorMessage = "Enter a size in mm, like 0.25."), Range(0.1, 1.0, ErrorMessage = Length)]
    public decimal? SmallestModuleMm { get; init; }

    [Required(ErrorMessage = "Enter a size in mm, like 0.33."), Range(0.1, 1.0, ErrorMessage = Length)]
    public decimal? FineModuleMm { get; init; }

    [Required(ErrorMessage = "Enter a size in mm, like 0.6."), Range(0.1, 3.0, ErrorMessage = Length)]
    public decimal? LargestModuleMm { get; init; }

    [Required(ErrorMessage = "Enter a length in mm, like 30."), Range(1.0, 150.0, ErrorMessage = Length)]
    public decimal? FoldGapMm { get; init; }

    [Required(ErrorMessage = "Enter a length in mm, like 120."), Range(30.0, 400.0, ErrorMessage = Length)]
    public decimal? LongestFoldMm { get; init; }

    public bool NameLeads { get; init; }

    public bool AddressInWords { get; init; }

    [Required(ErrorMessage = "Choose the tape’s colour."), StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
    public string? TapeColour { get; init; }

    [StringLength(20, ErrorMessage = "Keep the ink within 20 characters.")]
    public string? InkColour { get; init; }

    [Required(ErrorMessage = "Enter the words beside the square of a return label."), StringLength(60, ErrorMessage = "Keep the words within 60 characters.")]
    public string? ReturnWords { get; init; }

    [Required(ErrorMessage = "Choose a paper."), RegularExpression("A4|Letter", ErrorMessage = "Choose a paper.")]
    public string? SheetPaper { get; init; }

    [Required(ErrorMessage = "Enter the number of columns."), Range(1, 20, ErrorMessage = "Enter a number from 1 to 20.")]
    public int? SheetColumns { get; init; }

    [Required(ErrorMessage = "Enter the number of rows."), Range(1, 40, ErrorMessage = "Enter a number from 1 to 40.")]
    public int? SheetRows { get; init; }

    [Required(ErrorMessage = "Enter a length in mm."), Range(10.0, 216.0, ErrorMessage = Length)]
    public decimal? SheetWidthMm { get; init; }

    [Required(ErrorMessage = "Enter a length in mm."), Range(6.0, 297.0, ErrorMessage = Length)]
    public decimal? SheetHeightMm { get; init; }

    [Required(ErrorMessage = "Enter a length in mm."), Range(0.0, 100.0, ErrorMessage = Length)]
    public decimal? SheetLeftMm { get; init; }

    [Required(ErrorMessage = "Enter a length in mm."), Range(0.0, 100.0, ErrorMessage = Length)]
    public decimal? SheetTopMm { get; init; }

    [Required(ErrorMessage = "Enter a length in mm."), Range(10.0, 216.0, ErrorMessage = Length)]
    public decimal? SheetPitchXMm { get; init; }

    [Required(ErrorMessage = "Enter a length in mm."), Range(6.0, 297.0, ErrorMessage = Length)]
    public decimal? SheetPitchYMm { get; init; }

    public static SettingsInput Of(LabelSettings s) => new()
    {
        Version = s.Version,
        TapeMm = s.TapeMm,
        MarginMm = s.MarginMm,
        Dpi = s.Dpi,
        LongestMm = s.LongestMm,
        LargestPoints = s.LargestPoints,
        SmallestModuleMm = s.SmallestModuleMm,
        FineModuleMm = s.FineModuleMm,
        LargestModuleMm = s.LargestModuleMm,
        FoldGapMm = s.FoldGapMm,
        LongestFoldMm = s.LongestFoldMm,
        NameLeads = s.NameLeads,
        AddressInWords = s.AddressInWords,
        TapeColour = s.TapeColour,
        InkColour = s.InkColour,
        ReturnWords = s.ReturnWords,
        SheetPaper = s.SheetPaper,
        SheetColumns = s.SheetColumns,
        SheetRows = s.SheetRows,
        SheetWidthMm = s.SheetWidthMm,
        SheetHeightMm = s.SheetHeightMm,
        SheetLeftMm = s.SheetLeftMm,
        SheetTopMm = s.SheetTopMm,
        SheetPitchXMm = s.SheetPitchXMm,
        SheetPitchYMm = s.SheetPitchYMm,
    };

    /// <summary>Once the form holds.</summary>
    public LabelSettings ToSettings() => new()
    {
        Version = Version,
        TapeMm = TapeMm!.Value,
        MarginMm = MarginMm!.Value,
        Dpi = Dpi!.Value,
        LongestMm = LongestMm!.Value,
        LargestPoints = LargestPoints!.Value,
        SmallestModuleMm = SmallestModuleMm!.Value,
        FineModuleMm = FineModuleMm!.Value,
        LargestModuleMm = LargestModuleMm!.Value,
        FoldGapMm = FoldGapMm!.Value,
        LongestFoldMm = LongestFoldMm!.Value,
        NameLeads = NameLeads,
        AddressInWords = AddressInWords,
        TapeColour = TapeColour!,
        InkColour = InkColour ?? "",
        ReturnWords = ReturnWords!,
        SheetPaper = SheetPaper!,
        SheetColumns = SheetColumns!.Value,
        SheetRows = SheetRows!.Value,
        SheetWidthMm = SheetWidthMm!.Value,
        SheetHeightMm = SheetHeightMm!.Value,
        SheetLeftMm = SheetLeftMm!.Value,
        SheetTopMm = SheetTopMm!.Value,
        SheetPitchXMm = SheetPitchXMm!.Value,
        SheetPitchYMm = SheetPitchYMm!.Value,
    };

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (TapeMm - 2 * MarginMm < 3)
            yield return new("Less than 3 mm would be left between the margins. Enter the margin at one edge only.", [nameof(MarginMm)]);
        if (LongestFoldMm - FoldGapMm < 20)
            yield return new("Each half would be shorter than 10 mm. Enter a longer label or a smaller gap.", [nameof(LongestFoldMm)]);
        if (ToSettings().InkFault(TapeColour, InkColour) is { } unreadable)
            yield return new(unreadable, [nameof(InkColour)]);
        if (SmallestModuleMm > FineModuleMm || FineModuleMm > LargestModuleMm)
            yield return new("Enter the three module sizes in rising order: smallest, fine, largest.", [nameof(SmallestModuleMm)]);
        if (ToSettings().Sheet().Fault() is { } fault)
            yield return new(fault, [nameof(SheetColumns)]);
    }
}
