using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Core.Tests.Customising.Planning;

public class MatchedSetTests
{
    private static readonly Tolerances Instruments = new();

    // Two readings of 0.1 g differ by up to 0.14 g, of 1 mm by 1.4 mm, of 1 kg·cm² by 1.4.
    [Theory]
    [InlineData(300.1, 32.07, 291.2, true)]
    [InlineData(300.2, 32, 290, false)]
    [InlineData(300, 32.2, 290, false)]
    [InlineData(300, 32, 292, false)]
    public void Frames_match_where_measuring_cannot_tell_any_figure_apart(double mass, double balance, double swing, bool match) =>
        Assert.Equal(match, MatchedSet.IsMatched([Frame(300, 32, 290), Frame(mass, balance, swing)], new Wanted()));

    [Theory]
    [InlineData(300.05, true)]
    [InlineData(301, false)]
    public void Frames_that_are_alike_match_what_is_wanted_only_where_they_measure_it(double wanted, bool match) =>
        Assert.Equal(match, MatchedSet.IsMatched([Frame(300, 32, 290), Frame(300, 32, 290)], new Wanted { MassG = wanted }));

    private static MeasuredBody Frame(double mass, double balance, double swing) => new(Instruments.Mass(mass), Instruments.Length(balance), Instruments.Swing(swing));
}
