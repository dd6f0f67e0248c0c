using TagPage.Core.Sports;
using TagPage.Core.Units;

namespace TagPage.Core.Tests.Sports;

public class TensionCheckTests
{
    // The usual ranges are common practice, no source: tennis 30–65 lb, badminton 18–36 lb, squash 20–30 lb.
    [Theory]
    [InlineData(Sport.Tennis, "30", TensionUnit.Lb, TensionVerdict.Usual)]
    [InlineData(Sport.Tennis, "65", TensionUnit.Lb, TensionVerdict.Usual)]
    [InlineData(Sport.Tennis, "65.5", TensionUnit.Lb, TensionVerdict.Unusual)]
    [InlineData(Sport.Tennis, "24", TensionUnit.Kg, TensionVerdict.Usual)]
    [InlineData(Sport.Tennis, "24", TensionUnit.Lb, TensionVerdict.Unusual)]
    [InlineData(Sport.Badminton, "24", TensionUnit.Lb, TensionVerdict.Usual)]
    [InlineData(Sport.Badminton, "24", TensionUnit.Kg, TensionVerdict.Unusual)]
    [InlineData(Sport.Squash, "52", TensionUnit.Lb, TensionVerdict.Unusual)]
    [InlineData(Sport.Tennis, "52", TensionUnit.Kg, TensionVerdict.Impossible)]
    [InlineData(Sport.Tennis, "4.9", TensionUnit.Lb, TensionVerdict.Impossible)]
    [InlineData(Sport.Tennis, "100", TensionUnit.Lb, TensionVerdict.Unusual)]
    [InlineData(Sport.Tennis, "0", TensionUnit.Kg, TensionVerdict.Impossible)]
    [InlineData(Sport.Squash, "-24", TensionUnit.Lb, TensionVerdict.Impossible)]
    [InlineData(Sport.Squash, "79228162514264337593543950335", TensionUnit.Kg, TensionVerdict.Impossible)]
    [InlineData(Sport.Squash, "-79228162514264337593543950335", TensionUnit.Kg, TensionVerdict.Impossible)]
    public void A_slip_is_asked_about_and_nonsense_is_refused(
        Sport sport, string value, TensionUnit unit, TensionVerdict expected)
    {
        var tension = new Tension(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture), unit);
        Assert.Equal(expected, TensionCheck.Of(sport, tension));
    }

    [Fact]
    public void Frames_are_limited_as_in_the_rules_of_their_sports()
    {
        // ITF Rules of Tennis, App. II: 73.7 × 31.7 cm. BWF Laws, Law 4: 680 × 230 mm. World Squash, appendix: 686 × 215 mm.
        Assert.Equal((737, 317), Limits(Sport.Tennis));
        Assert.Equal((680, 230), Limits(Sport.Badminton));
        Assert.Equal((686, 215), Limits(Sport.Squash));
        Assert.Throws<ArgumentOutOfRangeException>(() => SportFacts.Of((Sport)99));
    }

    private static (int Length, int Width) Limits(Sport sport)
    {
        var limits = SportFacts.Of(sport).Limits;
        return (limits.MaxLengthMm, limits.MaxWidthMm);
    }
}
