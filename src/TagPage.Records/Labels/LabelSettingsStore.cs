using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Labels;

/// <summary>The one row of how labels are printed.</summary>
public sealed class LabelSettingsStore(Database database)
{
    /// <summary>What was saved, or the starting values.</summary>
    public LabelSettings Get() => database.Read(c => c.QuerySingleOrDefault<LabelSettings>(GetSql)) ?? new LabelSettings();

    private const string GetSql = """
        SELECT tape_mm, margin_mm, dpi, longest_mm, largest_points, smallest_module_mm, fine_module_mm, largest_module_mm, fold_gap_mm,
               tape_colour, ink_colour, return_words, sheet_paper, sheet_columns, sheet_rows, sheet_width_mm, sheet_height_mm,
               sheet_left_mm, sheet_top_mm, sheet_pitch_x_mm, sheet_pitch_y_mm, version
        FROM label_setting
        WHERE id = 1
        """;

    public Outcome Save(LabelSettings settings) => database.Write<Outcome>(c =>
        c.Execute(SaveSql, settings) == 1 ? new Outcome.Done(1) : Outcome.Stale);

    // The first save makes the row; after that only the version it was read under may be replaced.
    private const string SaveSql = """
        INSERT INTO label_setting
          (id, tape_mm, margin_mm, dpi, longest_mm, largest_points, smallest_module_mm, fine_module_mm, largest_module_mm, fold_gap_mm,
           tape_colour, ink_colour, return_words, sheet_paper, sheet_columns, sheet_rows, sheet_width_mm, sheet_height_mm,
           sheet_left_mm, sheet_top_mm, sheet_pitch_x_mm, sheet_pitch_y_mm)
        VALUES
          (1, @TapeMm, @MarginMm, @Dpi, @LongestMm, @LargestPoints, @SmallestModuleMm, @FineModuleMm, @LargestModuleMm, @FoldGapMm,
           @TapeColour, @InkColour, @ReturnWords, @SheetPaper, @SheetColumns, @SheetRows, @SheetWidthMm, @SheetHeightMm,
           @SheetLeftMm, @SheetTopMm, @SheetPitchXMm, @SheetPitchYMm)
        ON CONFLICT (id) DO UPDATE
        SET tape_mm = @TapeMm, margin_mm = @MarginMm, dpi = @Dpi, longest_mm = @LongestMm, largest_points = @LargestPoints,
            smallest_module_mm = @SmallestModuleMm, fine_module_mm = @FineModuleMm, largest_module_mm = @LargestModuleMm,
            fold_gap_mm = @FoldGapMm, tape_colour = @TapeColour, ink_colour = @InkColour, return_words = @ReturnWords,
            sheet_paper = @SheetPaper, sheet_columns = @SheetColumns, sheet_rows = @SheetRows, sheet_width_mm = @SheetWidthMm,
            sheet_height_mm = @SheetHeightMm, sheet_left_mm = @SheetLeftMm, sheet_top_mm = @SheetTopMm,
            sheet_pitch_x_mm = @SheetPitchXMm, sheet_pitch_y_mm = @SheetPitchYMm, version = version + 1
        WHERE version = @Version
        """;
}
