using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>The files of records, each after those it refers to.</summary>
internal static class ImportSheets
{
    /// <summary>The shop's own page in Markdown, for a shop that does not exist yet.</summary>
    public const string HomeFile = "home.md";

    public static IReadOnlyList<Sheet> All { get; } =
        [ClientSheet.Sheet, PlayerSheet.Sheet, StringSheet.Sheet, FrameSheet.Sheet, RacketSheet.Sheet, SpecSheet.Sheet, PlaceSheet.Sheet, PieceSheet.Sheet, JobSheet.Sheet];

    /// <summary>Which files must come with a file because it refers to them.</summary>
    public static IReadOnlyDictionary<string, string[]> Needs { get; } = new Dictionary<string, string[]>
    {
        [PlayerSheet.File] = [ClientSheet.File],
        [RacketSheet.File] = [PlayerSheet.File],
        [SpecSheet.File] = [RacketSheet.File],
        [PlaceSheet.File] = [RacketSheet.File],
        [PieceSheet.File] = [RacketSheet.File],
        [JobSheet.File] = [RacketSheet.File, StringSheet.File],
    };

    /// <summary>Every name that a file may have.</summary>
    public static IReadOnlyList<string> FileNames { get; } = [ShopSheet.File, HomeFile, .. All.Select(s => s.File), .. All.Select(s => s.GivenAs).OfType<string>()];

    /// <summary>The name that a file is read by, whatever its case and whether or not this program gave it away; null for any other.</summary>
    public static string? Known(string name) =>
        All.FirstOrDefault(sheet => sheet.IsNamed(name))?.File ?? FileNames.FirstOrDefault(known => known.Equals(name, StringComparison.OrdinalIgnoreCase));
}
