namespace TagPage.Labels.Geometry;

/// <summary>How a QR symbol sits on a tape: in whole dots, with its quiet zone, and what to expect of it.</summary>
/// <param name="DotsPerModule">Side of a module in dots; 0 where not even one dot fits.</param>
/// <param name="ModuleMm">The same in mm.</param>
/// <param name="Grade">Whether it may be printed.</param>
/// <param name="Reason">Why it has that grade.</param>
public sealed record SquareFit(int DotsPerModule, double ModuleMm, SquareGrade Grade, SquareReason Reason)
{
    /// <summary>Tape up to this width, in mm, never carries a square.</summary>
    public const double TooNarrowMm = 6;

    // A limit of 0.25 mm must not refuse what is 0.25 mm but for rounding.
    private const double Slack = 1e-9;

    /// <summary>Whether the square may be printed.</summary>
    public bool IsPrinted => Grade != SquareGrade.Refused;

    /// <summary>
    /// The largest module of whole dots with which the symbol fits between the tape's margins and keeps its quiet zone
    /// of four modules above and below. The unprinted margin counts as quiet zone.
    /// </summary>
    /// <param name="modules">The symbol's modules a side: 17 + 4 · version.</param>
    /// <param name="tape">Width and colours.</param>
    /// <param name="printer">Margin and dots.</param>
    /// <param name="limits">The shop's limits for the size of a module.</param>
    public static SquareFit On(int modules, Tape tape, Printer printer, ModuleLimits limits)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(modules, 21);
        var dots = Largest(modules, tape.WidthMm, printer, limits);
        var mm = dots * printer.DotMm;
        var (grade, reason) = Judge(mm, tape, limits);
        return new SquareFit(dots, mm, grade, reason);
    }

    private static int Largest(int modules, double tapeMm, Printer printer, ModuleLimits limits)
    {
        var printable = printer.PrintableDots(tapeMm);
        var most = Math.Min(printable / modules, Math.Max(1, (int)Math.Floor(limits.LargestOn(tapeMm) / printer.DotMm + Slack)));
        for (var dots = most; dots > 0; dots--)
        {
            var free = (printable - modules * dots) / 2 * printer.DotMm; // on the side with less of it
            if (TagQr.QuietZone * dots * printer.DotMm <= printer.MarginMm + free + Slack)
                return dots;
        }
        return 0;
    }

    private static (SquareGrade, SquareReason) Judge(double mm, Tape tape, ModuleLimits limits)
    {
        var contrast = SymbolContrast.Of(tape.Colour, tape.Ink);
        if (contrast.AllLight < 0)
            return (SquareGrade.Refused, SquareReason.LightOnDark);
        if (!tape.IsReadable || contrast.AllLight < SymbolContrast.Least)
            return (SquareGrade.Refused, SquareReason.LittleContrast);
        if (tape.WidthMm <= TooNarrowMm)
            return (SquareGrade.Refused, SquareReason.NarrowTape);
        if (mm <= 0 || mm < limits.SmallestMm - Slack)
            return (SquareGrade.Refused, SquareReason.SmallModules);
        if (contrast.AllLight < SymbolContrast.Fair)
            return (SquareGrade.CloseUp, SquareReason.FaintContrast);
        if (mm < limits.FineMm - Slack)
            return (SquareGrade.CloseUp, SquareReason.MediumModules);
        return contrast.RedLight < SymbolContrast.Fair
            ? (SquareGrade.CloseUp, SquareReason.FaintInRedLight)
            : (SquareGrade.Fine, SquareReason.LargeModules);
    }
}
