using TagPage.Core.Colour;
using TagPage.Labels.Geometry;

namespace TagPage.Labels.Tests.Geometry;

public class SquareFitTests
{
    private const int Version2 = 25; // modules a side, 17 + 4 · version (ISO/IEC 18004)

    private static readonly int[] Resolutions = [180, 203, 300, 360, 600];

    private static readonly double[] Margins = [0, 0.5, 1, 2];

    private static readonly ModuleLimits Unbounded = ModuleLimits.Usual with { LargestMm = 10 };

    // Worked out by hand from: printable height = width − 2 · 1 mm in whole dots; symbol = 25 · k dots;
    // quiet zone of 4 modules (ISO/IEC 18004) within margin and what is left of the printable height.
    [Theory]
    [InlineData(9, 180, 49, 1, 0.141, SquareGrade.Refused)]
    [InlineData(9, 360, 99, 3, 0.212, SquareGrade.Refused)]
    [InlineData(12, 180, 70, 2, 0.282, SquareGrade.CloseUp)]
    [InlineData(12, 360, 141, 5, 0.353, SquareGrade.Fine)]
    [InlineData(18, 180, 113, 3, 0.423, SquareGrade.Fine)]
    [InlineData(24, 180, 155, 5, 0.706, SquareGrade.Fine)]
    public void Dots_and_modules_of_a_version_2_square_are_as_worked_out(
        int tape, int dpi, int printable, int dots, double mm, SquareGrade grade)
    {
        var printer = new Printer(1.0, dpi);
        var fit = SquareFit.On(Version2, Tape.Usual with { WidthMm = tape }, printer, Unbounded);
        Assert.Equal((printable, dots, grade), (printer.PrintableDots(tape), fit.DotsPerModule, fit.Grade));
        Assert.Equal(mm, fit.ModuleMm, 3);
    }

    [Fact]
    public void The_largest_module_stops_a_square_from_growing_over_the_whole_tape()
    {
        var fit = SquareFit.On(Version2, Tape.Usual with { WidthMm = 24 }, Printer.Usual, ModuleLimits.Usual);
        Assert.Equal((4, 0.564), (fit.DotsPerModule, Math.Round(fit.ModuleMm, 3)));
    }

    [Fact]
    public void A_shop_may_insist_on_small_modules_but_not_on_6_mm_tape()
    {
        var brave = ModuleLimits.Usual with { SmallestMm = 0.1 };
        Assert.Equal(SquareGrade.CloseUp, SquareFit.On(Version2, Tape.Usual with { WidthMm = 9 }, new Printer(1, 360), brave).Grade);
        foreach (var dpi in Resolutions)
        {
            var fit = SquareFit.On(Version2, Tape.Usual with { WidthMm = 6 }, new Printer(0, dpi), brave);
            Assert.Equal((SquareGrade.Refused, SquareReason.NarrowTape), (fit.Grade, fit.Reason));
        }
    }

    [Fact]
    public void Every_square_keeps_four_light_modules_above_and_below_whatever_the_tape()
    {
        foreach (var (tape, dpi, margin) in from t in Tape.Widths from d in Resolutions from m in Margins select (t, d, m))
        {
            for (var modules = 21; modules <= 41; modules += 4)
            {
                var printer = new Printer(margin, dpi);
                var fit = SquareFit.On(modules, Tape.Usual with { WidthMm = tape }, printer, Unbounded);
                var symbol = modules * fit.ModuleMm;
                Assert.True(symbol <= tape - 2 * margin + 1e-9);
                Assert.True(fit.DotsPerModule == 0 || (tape - symbol) / 2 >= 4 * fit.ModuleMm - printer.DotMm);
            }
        }
    }

    // Contrast by WCAG 2.2: white and #767676 4.542225, white and black 21, #FF0000 on white 3.998477. Symbol contrast by the
    // same luminances: 1 − 0.2126 of red on white; in red light pure red ink is as light as the paper.
    [Theory]
    [InlineData("#FFFFFF", "#000000", SquareGrade.Fine, SquareReason.LargeModules)]
    [InlineData("#FFFFFF", "#FF0000", SquareGrade.CloseUp, SquareReason.FaintInRedLight)]
    [InlineData("#000000", "#FFFFFF", SquareGrade.Refused, SquareReason.LightOnDark)]
    [InlineData("#1E5B49", "#FFD700", SquareGrade.Refused, SquareReason.LightOnDark)]
    [InlineData("#FFFFFF", "#FFD700", SquareGrade.Refused, SquareReason.LittleContrast)]
    [InlineData("#808080", "#808080", SquareGrade.Refused, SquareReason.LittleContrast)]
    public void Ink_must_be_darker_than_tape_and_far_enough_from_it(string tape, string ink, SquareGrade grade, SquareReason reason)
    {
        var fit = SquareFit.On(Version2, new Tape(18, Rgb.Parse(tape), Rgb.Parse(ink)), Printer.Usual, ModuleLimits.Usual);
        Assert.Equal((grade, reason), (fit.Grade, fit.Reason));
    }

    // ISO/IEC 15415, symbol contrast: lightest less darkest, failed under 20 %, grade 2 from 40 %; from memory. Luminances
    // worked out by hand from sRGB: #F2C91D 0.606, #E8791A 0.309, #C8352B 0.150, #7A4FA3 0.122, #2F6DB5 0.150, #3B9150 0.221.
    [Theory]
    [InlineData("#F2C91D", SquareGrade.Fine, SquareReason.LargeModules)] // yellow
    [InlineData("#E8791A", SquareGrade.CloseUp, SquareReason.FaintContrast)] // orange
    [InlineData("#3B9150", SquareGrade.CloseUp, SquareReason.FaintContrast)] // green
    [InlineData("#C8352B", SquareGrade.Refused, SquareReason.LittleContrast)] // red
    [InlineData("#7A4FA3", SquareGrade.Refused, SquareReason.LittleContrast)] // purple
    [InlineData("#2F6DB5", SquareGrade.Refused, SquareReason.LittleContrast)] // blue
    public void Black_on_a_dark_colour_scans_poorly_and_the_grade_says_so(string tape, SquareGrade grade, SquareReason reason)
    {
        var fit = SquareFit.On(Version2, new Tape(18, Rgb.Parse(tape), Rgb.Black), Printer.Usual, ModuleLimits.Usual);
        Assert.Equal((grade, reason), (fit.Grade, fit.Reason));
    }

    [Theory]
    [InlineData("#FFFFFF", "#000000", 1, 1)]
    [InlineData("#FF0000", "#000000", 0.2126, 1)] // red tape is dark to a phone and light to red light
    [InlineData("#0000FF", "#000000", 0.0722, 0)] // blue tape is dark to both
    [InlineData("#FFFFFF", "#FF0000", 0.7874, 0)]
    [InlineData("#000000", "#FFFFFF", -1, -1)]
    public void Symbol_contrast_is_told_for_all_light_and_for_red_light(string tape, string ink, double all, double red)
    {
        var contrast = SymbolContrast.Of(Rgb.Parse(tape), Rgb.Parse(ink));
        Assert.Equal((all, red), (Math.Round(contrast.AllLight, 4), Math.Round(contrast.RedLight, 4)));
    }

    // 3:1 by WCAG 2.2 (1.4.3, 1.4.11): #959595 on white is 2.996, #949494 on white 3.03.
    [Theory]
    [InlineData("#FFFFFF", "#000000", true)]
    [InlineData("#000000", "#FFFFFF", true)]
    [InlineData("#FFFFFF", "#949494", true)]
    [InlineData("#FFFFFF", "#959595", false)]
    [InlineData("#FFFFFF", "#AAAAAA", false)]
    [InlineData("#000000", "#000000", false)]
    public void Words_need_three_times_the_contrast(string tape, string ink, bool isReadable) =>
        Assert.Equal(isReadable, new Tape(12, Rgb.Parse(tape), Rgb.Parse(ink)).IsReadable);

    [Fact]
    public void A_tape_narrower_than_its_margins_prints_nothing()
    {
        var printer = new Printer(3, 180);
        Assert.Equal(0, printer.PrintableDots(6));
        Assert.Equal(0, SquareFit.On(Version2, Tape.Usual with { WidthMm = 6 }, printer, ModuleLimits.Usual).DotsPerModule);
    }
}
