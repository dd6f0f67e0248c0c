using System.Text.Json.Serialization;

namespace TagPage.Records.Labels;

/// <summary>How the shop prints labels. Lengths in mm.</summary>
public sealed record LabelSettings
{
    public decimal TapeMm { get; init; } = 12;
    public decimal MarginMm { get; init; } = 1;
    public int Dpi { get; init; } = 180;
    public decimal LongestMm { get; init; } = 80;
    public decimal LargestPoints { get; init; } = 10;
    public decimal SmallestModuleMm { get; init; } = 0.25m;
    public decimal FineModuleMm { get; init; } = 0.33m;
    public decimal LargestModuleMm { get; init; } = 0.6m;
    public decimal FoldGapMm { get; init; } = 30;
    public decimal LongestFoldMm { get; init; } = 120;

    /// <summary>Whether what was done begins with whose it is.</summary>
    public bool NameLeads { get; init; }

    /// <summary>Whether the address stands in words beside its square.</summary>
    public bool AddressInWords { get; init; }
    public string TapeColour { get; init; } = "white";

    /// <summary>Empty for one that suits the tape.</summary>
    public string InkColour { get; init; } = "";
    public string ReturnWords { get; init; } = "Lost racket: scan to return it";
    public string SheetPaper { get; init; } = "A4";
    public int SheetColumns { get; init; } = 3;
    public int SheetRows { get; init; } = 8;
    public decimal SheetWidthMm { get; init; } = 60;
    public decimal SheetHeightMm { get; init; } = 30;
    public decimal SheetLeftMm { get; init; } = 10;
    public decimal SheetTopMm { get; init; } = 20;
    public decimal SheetPitchXMm { get; init; } = 65;
    public decimal SheetPitchYMm { get; init; } = 33;

    /// <summary>Of the row they were read from; not among what is kept of them.</summary>
    [JsonIgnore]
    public int Version { get; init; }
}
