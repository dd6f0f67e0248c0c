using TagPage.Labels.Layout;

namespace TagPage.Labels.Printing;

/// <summary>How a sheet of labels is divided; all lengths in mm.</summary>
/// <param name="Paper">The sheet.</param>
/// <param name="Columns">Labels side by side.</param>
/// <param name="Rows">Labels one above the other.</param>
/// <param name="LabelWidthMm">Width of one.</param>
/// <param name="LabelHeightMm">Height of one.</param>
public sealed record SheetPlan(Paper Paper, int Columns, int Rows, double LabelWidthMm, double LabelHeightMm)
{
    /// <summary>From the sheet's left edge to the first column.</summary>
    public double LeftMm { get; init; }

    /// <summary>From the sheet's upper edge to the first row.</summary>
    public double TopMm { get; init; }

    /// <summary>From the left edge of one column to that of the next.</summary>
    public double PitchXMm { get; init; }

    /// <summary>From the upper edge of one row to that of the next.</summary>
    public double PitchYMm { get; init; }

    /// <summary>Labels on a sheet.</summary>
    public int Places => Columns * Rows;

    /// <summary>Why the plan is impossible, in a sentence, or null.</summary>
    public string? Fault()
    {
        if (Columns < 1 || Rows < 1 || LabelWidthMm <= 0 || LabelHeightMm <= 0 || LeftMm < 0 || TopMm < 0)
            return "A sheet has at least one column and one row, and lengths above zero.";
        if ((Columns > 1 && PitchXMm < LabelWidthMm) || (Rows > 1 && PitchYMm < LabelHeightMm))
            return "The pitch is from edge to edge, so it is at least as long as the label.";
        var right = LeftMm + (Columns - 1) * PitchXMm + LabelWidthMm;
        var bottom = TopMm + (Rows - 1) * PitchYMm + LabelHeightMm;
        return right > Paper.WidthMm + 0.05 || bottom > Paper.HeightMm + 0.05
            ? $"The labels would reach to {right:0.#} × {bottom:0.#} mm; {Paper.Name} is {Paper.WidthMm:0.#} × {Paper.HeightMm:0.#} mm."
            : null;
    }

    /// <summary>Labels place by place, row by row.</summary>
    /// <param name="labels">In their order.</param>
    /// <param name="firstFree">The first place that still has a label, counted from 1.</param>
    public IEnumerable<PrintPage> Pages(IEnumerable<LaidLabel> labels, int firstFree = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(firstFree, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(firstFree, Places);
        var place = firstFree - 1;
        var placed = new List<PlacedLabel>();
        foreach (var label in labels)
        {
            if (place == Places)
            {
                yield return new PrintPage(Paper.WidthMm, Paper.HeightMm, placed);
                (place, placed) = (0, []);
            }
            placed.Add(new PlacedLabel(label, LeftMm + place % Columns * PitchXMm, TopMm + place / Columns * PitchYMm));
            place++;
        }
        if (placed.Count > 0)
            yield return new PrintPage(Paper.WidthMm, Paper.HeightMm, placed);
    }
}
