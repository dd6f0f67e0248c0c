using CsCheck;
using TagPage.Core.Customising;

namespace TagPage.Core.Tests.Customising;

public class BodyTests
{
    // Recomputed independently with NumPy from the parallel-axis theorem and the centre of mass of two bodies.
    [Theory]
    [InlineData(300, 32.0, 290, 4, 68, 304, 32.473684, 303.456)]
    [InlineData(300, 32.0, 290, 10, 67.5, 310, 33.145161, 323.0625)]
    [InlineData(305, 32.5, 310, 4, 53, 309, 32.765372, 317.396)]
    [InlineData(300, 32.0, 290, 5, 10, 305, 31.639344, 290)]
    [InlineData(86, 29.5, 83, 2, 66, 88, 30.329545, 89.272)]
    public void Mass_added_at_one_place_moves_weight_balance_and_swing_weight(
        double m, double b, double s, double grams, double at, double mAfter, double bAfter, double sAfter)
    {
        var after = new Body(m, b, s).With(new AddedMass(grams, at));

        Assert.Equal((mAfter, bAfter, sAfter), (after.MassG, Math.Round(after.BalanceCm, 6), Math.Round(after.SwingWeight, 6)));
    }

    [Fact]
    public void Mass_added_at_two_places_moves_all_three()
    {
        // Recomputed independently with NumPy.
        var after = new Body(305, 32.5, 300).With(new AddedMass(3, 53), new AddedMass(6, 5));

        Assert.Equal((314.0, 32.170382, 305.697), (after.MassG, Math.Round(after.BalanceCm, 6), Math.Round(after.SwingWeight, 6)));
    }

    // Recomputed independently with NumPy: the swing weight less the mass times the square of its way to the axis.
    [Theory]
    [InlineData(300, 32.0, 290, 10, 67.5, 144.8, 156.995968)]
    [InlineData(305, 32.5, 310, 4, 53, 155.59375, 157.252989)]
    [InlineData(300, 32.0, 290, 5, 10, 144.8, 147.180328)]
    [InlineData(86, 29.5, 83, 2, 66, 50.2985, 52.902443)]
    public void Recoil_weight_is_about_the_centre_of_mass(double m, double b, double s, double grams, double at, double before, double after)
    {
        var body = new Body(m, b, s);

        Assert.Equal(before, body.RecoilWeight, 6);
        Assert.Equal(after, body.With(new AddedMass(grams, at)).RecoilWeight, 6);
    }

    [Fact]
    public void Uniform_rod_worked_by_hand()
    {
        // 350 g, 70 cm: M·L²/12 = 142.916667 about its middle, and 0.35·25² = 218.75 more about the axis at 10 cm.
        var rod = new Body(350, 35, (0.35 * 70 * 70 / 12) + 218.75);

        Assert.Equal(361.666667, rod.SwingWeight, 6);
        Assert.Equal(142.916667, rod.RecoilWeight, 6);
    }

    [Fact]
    public void Rod_cut_into_small_masses_weighs_and_swings_as_the_whole()
    {
        const int pieces = 7000;
        var first = new Body(350.0 / pieces, 70.0 / pieces / 2, 350.0 / pieces / 1000 * Math.Pow((70.0 / pieces / 2) - 10, 2));

        var rod = first.With(Enumerable.Range(1, pieces - 1).Select(i => new AddedMass(350.0 / pieces, 70.0 / pieces * (i + 0.5))));

        Assert.Equal((350.0, 35.0, 361.6667), (Math.Round(rod.MassG, 6), Math.Round(rod.BalanceCm, 6), Math.Round(rod.SwingWeight, 4)));
    }

    [Fact]
    public void Twist_weight_changes_by_mass_times_square_of_the_way_to_the_long_axis()
    {
        // By hand: 0.006 kg · 12.5² cm².
        Assert.Equal(0.9375, new AddedMass(6, 53, 12.5).TwistChange, 9);
        Assert.Equal(0, new AddedMass(6, 67.5).TwistChange);
    }

    [Fact]
    public void Mass_at_the_balance_point_leaves_the_balance() =>
        Gen.Select(Bodies, Grams).Sample((body, grams) =>
            Math.Abs(body.With(new AddedMass(grams, body.BalanceCm)).BalanceCm - body.BalanceCm) < 1e-9);

    [Fact]
    public void Mass_on_the_axis_leaves_the_swing_weight() =>
        Gen.Select(Bodies, Grams).Sample((body, grams) =>
            body.With(new AddedMass(grams, Body.AxisCm)).SwingWeight.Equals(body.SwingWeight));

    [Fact]
    public void Order_does_not_matter() =>
        Gen.Select(Bodies, Masses.Array[1, 6]).Sample((body, masses) =>
            IsSame(body.With(masses), masses.Reverse().Aggregate(body, (b, mass) => b.With(mass))));

    [Fact]
    public void What_is_taken_off_again_leaves_the_racket_as_it_was() =>
        Gen.Select(Bodies, Masses).Sample((body, mass) =>
            IsSame(body, body.With(mass).With(mass with { Grams = -mass.Grams })));

    [Fact]
    public void Recoil_weight_never_falls_when_mass_is_added() =>
        Gen.Select(Bodies, Masses).Sample((body, mass) => body.With(mass).RecoilWeight >= body.RecoilWeight - 1e-9);

    [Fact]
    public void Heavier_grams_scale_everything_alike() =>
        Gen.Select(Bodies, Masses, Gen.Double[0.01, 100]).Sample((body, mass, times) =>
        {
            var scaled = new Body(body.MassG * times, body.BalanceCm, body.SwingWeight * times).With(mass with { Grams = mass.Grams * times });
            var after = body.With(mass);
            return IsSame(scaled, new Body(after.MassG * times, after.BalanceCm, after.SwingWeight * times));
        });

    internal static bool IsSame(Body a, Body b) =>
        Near(a.MassG, b.MassG) && Near(a.BalanceCm, b.BalanceCm) && Near(a.SwingWeight, b.SwingWeight);

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1, Math.Abs(a));

    internal static readonly Gen<Body> Bodies =
        Gen.Select(Gen.Double[80, 400], Gen.Double[25, 40], Gen.Double[80, 380]).Select((m, b, s) => new Body(m, b, s));

    private static readonly Gen<double> Grams = Gen.Double[0.1, 20];

    private static readonly Gen<AddedMass> Masses =
        Gen.Select(Grams, Gen.Double[0, 70], Gen.Double[0, 13]).Select((g, at, off) => new AddedMass(g, at, off));
}
