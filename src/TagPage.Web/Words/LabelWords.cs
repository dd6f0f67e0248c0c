using TagPage.Labels.Geometry;

namespace TagPage.Web.Words;

/// <summary>What the pages say of a square.</summary>
public static class LabelWords
{
    public static string Of(SquareFit fit) => fit.Reason switch
    {
        SquareReason.LargeModules => $"On this tape its modules are {fit.ModuleMm:0.00} mm, {fit.DotsPerModule} dots: fine.",
        SquareReason.MediumModules => $"On this tape its modules are {fit.ModuleMm:0.00} mm, {fit.DotsPerModule} dots: it scans close up. Try it once with your phone.",
        SquareReason.FaintContrast => $"Its modules are {fit.ModuleMm:0.00} mm, but ink and tape are rather similar: a phone needs good light. Try it once with yours.",
        SquareReason.FaintInRedLight => $"Its modules are {fit.ModuleMm:0.00} mm: fine for phones. A hand scanner with red light may not see this ink on this tape.",
        SquareReason.SmallModules when fit.DotsPerModule == 0 => "On this tape it does not fit: the code is printed instead.",
        SquareReason.SmallModules => $"On this tape its modules would be {fit.ModuleMm:0.00} mm, too small: the code is printed instead.",
        SquareReason.NarrowTape => "Tape this narrow never carries a square: the code is printed instead.",
        SquareReason.LightOnDark => "The ink is lighter than the tape, and many phones read only dark on light: the code is printed instead.",
        _ => "Ink and tape are too similar for a camera: the code is printed instead.",
    };
}
