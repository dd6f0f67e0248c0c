using TagPage.Core.Rackets;
using TagPage.Core.Units;

namespace TagPage.Core.Tests.Rackets;

public class TensionRangeTests
{
    private static readonly TensionRange Printed = new(50, 60, TensionUnit.Lb);

    // 50 lb are 22.679619 kg and 60 lb 27.215542 kg; half a machine's step of 0.1 kg is allowed.
    [Theory]
    [InlineData(50, TensionUnit.Lb, true, false)]
    [InlineData(60, TensionUnit.Lb, true, false)]
    [InlineData(49.5, TensionUnit.Lb, false, false)]
    [InlineData(60.5, TensionUnit.Lb, false, true)]
    [InlineData(22.7, TensionUnit.Kg, true, false)]
    [InlineData(22.6, TensionUnit.Kg, false, false)]
    [InlineData(27.2, TensionUnit.Kg, true, false)]
    [InlineData(27.3, TensionUnit.Kg, false, true)]
    public void Tension_is_held_to_what_is_printed_in_either_unit(decimal value, TensionUnit unit, bool holds, bool exceeds)
    {
        var tension = new Tension(value, unit);

        Assert.Equal((holds, exceeds), (Printed.Holds(tension), Printed.IsExceededBy(tension)));
    }

    [Fact]
    public void Open_end_holds_everything_on_its_side()
    {
        Assert.True(new TensionRange(50, null, TensionUnit.Lb).Holds(new Tension(90, TensionUnit.Lb)));
        Assert.False(new TensionRange(50, null, TensionUnit.Lb).Holds(new Tension(20, TensionUnit.Kg)));
        Assert.True(new TensionRange(null, 12, TensionUnit.Kg).Holds(new Tension(20, TensionUnit.Lb)));
        Assert.False(new TensionRange(null, 12, TensionUnit.Kg).Holds(new Tension(30, TensionUnit.Lb)));
        Assert.False(default(TensionRange).IsKnown);
    }

    // Makers round: 11 to 13 kg is printed beside 24 to 28 lb, though 28 lb are only 12.7 kg and 24 lb 10.886217 kg.
    [Fact]
    public void Half_a_step_of_the_other_unit_is_rounding() =>
        Assert.True(new TensionRange(11, 13, TensionUnit.Kg).Holds(new Tension(24.25m, TensionUnit.Lb)));
}
