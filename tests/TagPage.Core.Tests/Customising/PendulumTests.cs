using CsCheck;
using TagPage.Core.Customising;

namespace TagPage.Core.Tests.Customising;

public class PendulumTests
{
    // Recomputed independently with NumPy from the physical pendulum and the parallel-axis theorem, g = 9.80665 m/s².
    [Theory]
    [InlineData(320, 32.5, 0, 1.52, 596.8723, 420.8723, 4)]
    [InlineData(320, 32.5, 10, 1.35, 325.9575, 325.9575, 4)]
    [InlineData(335, 31.8, 66, 1.45, 598.3673, 365.7433, 4)]
    [InlineData(320, 32.0, 0, 1.35, 463.583994, 290.783994, 6)]
    [InlineData(330, 31.8, 64, 1.33, 466.910921, 281.582921, 6)]
    [InlineData(350, 35, 0, 1.370638483, 571.666667, 361.666667, 5)]
    public void Period_gives_the_swing_weight(double m, double b, double axis, double period, double inertia, double swing, int decimals)
    {
        var pendulum = new Pendulum(m, b, axis, period);

        Assert.Equal(inertia, pendulum.InertiaAboutAxis(), decimals);
        Assert.Equal(swing, pendulum.SwingWeight(), decimals);
    }

    [Fact]
    public void Swing_of_ten_degrees_inflates_the_result_by_a_third_of_a_per_cent_and_a_little()
    {
        // Recomputed independently with NumPy: T = T₀(1 + θ²/16 + 11θ⁴/3072), and the inertia goes with T².
        var by = Pendulum.Lengthening(Pendulum.SmallSwingDegrees * Math.PI / 180);

        Assert.Equal(0.3818, ((by * by) - 1) * 100, 4);
    }

    [Fact]
    public void It_gives_back_the_swing_weight_wherever_the_racket_hangs() =>
        Gen.Select(BodyTests.Bodies, Gen.Double[0, 68]).Where((body, axis) => Math.Abs(body.BalanceCm - axis) > 3 && body.RecoilWeight > 20).Sample((body, axis) =>
        {
            // The period of a physical pendulum, from the inertia about where it hangs.
            var inertia = (body.RecoilWeight / 10_000) + (body.MassG / 1000 * Math.Pow((body.BalanceCm - axis) / 100, 2));
            var period = 2 * Math.PI * Math.Sqrt(inertia / (body.MassG / 1000 * 9.80665 * Math.Abs(body.BalanceCm - axis) / 100));
            return Math.Abs(new Pendulum(body.MassG, body.BalanceCm, axis, period).SwingWeight() - body.SwingWeight) < 1e-6;
        });

    [Fact]
    public void Weaker_gravity_of_another_town_gives_less() =>
        Assert.Equal(463.583994 * 9.78 / 9.80665, new Pendulum(320, 32, 0, 1.35).InertiaAboutAxis(9.78), 5);
}
