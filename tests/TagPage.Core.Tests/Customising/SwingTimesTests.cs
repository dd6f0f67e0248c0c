using TagPage.Core.Customising;

namespace TagPage.Core.Tests.Customising;

public class SwingTimesTests
{
    private const double Period = 1.4;

    [Fact]
    public void Taps_without_any_jitter_give_the_period_itself()
    {
        var timed = SwingTimes.OfTaps([.. Enumerable.Range(0, 21).Select(i => 3 + (Period * i))])!;

        Assert.Equal(Period, timed.PeriodS.Value, 12);
        Assert.Equal(0, timed.PeriodS.Off, 9);
        Assert.Equal((20, 0, 0), (timed.Swings, timed.Missed, timed.Doubled));
    }

    [Fact]
    public void Slope_and_its_standard_error_are_those_of_a_least_squares_line()
    {
        // By hand, taps at 0, 1.1, 1.9, 3.0: slope 4.9 / 5 = 0.98, left over 0.018, standard error √(0.018 / 2 / 5).
        var timed = SwingTimes.OfTaps([0, 1.1, 1.9, 3.0])!;

        Assert.Equal(0.98, timed.PeriodS.Value, 9);
        Assert.Equal(Math.Sqrt(0.018 / 2 / 5), timed.PeriodS.Off, 9);
    }

    [Fact]
    public void Swings_without_a_tap_and_taps_too_many_are_noticed()
    {
        var taps = Enumerable.Range(0, 21).Where(i => i is not (5 or 12 or 13)).Select(i => Period * i).Append((Period * 9) + 0.2).Order();

        var timed = SwingTimes.OfTaps([.. taps])!;

        Assert.Equal((20, 3, 1), (timed.Swings, timed.Missed, timed.Doubled));
        Assert.Equal(Period, timed.PeriodS.Value, 9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Too_few_taps_tell_nothing(int taps) => Assert.Null(SwingTimes.OfTaps([.. Enumerable.Range(0, taps).Select(i => Period * i)]));

    [Fact]
    public void Taps_that_do_not_rise_tell_nothing() => Assert.Null(SwingTimes.OfTaps([4, 4, 4, 4, 4]));

    [Fact]
    public void Jitter_of_the_hand_is_told_honestly()
    {
        // Simulated: 20 swings, taps off by 30 ms (standard deviation), two thousand times. With 19 degrees of freedom the
        // true period lies within one standard error in 67.0 % and within two in 94.0 % of cases (Student's t).
        var random = new Random(17);
        var within = new int[2];
        for (var run = 0; run < 2000; run++)
        {
            var timed = SwingTimes.OfTaps([.. Enumerable.Range(0, 21).Select(i => (Period * i) + (0.03 * Normal(random)))])!;
            var off = Math.Abs(timed.PeriodS.Value - Period) / timed.PeriodS.Off;
            within[0] += off <= 1 ? 1 : 0;
            within[1] += off <= 2 ? 1 : 0;
        }

        Assert.InRange(within[0] / 2000.0, 0.63, 0.71);
        Assert.InRange(within[1] / 2000.0, 0.92, 0.96);
    }

    [Fact]
    public void Rounds_give_the_mean_and_the_spread_of_their_times()
    {
        // By hand: 28.0, 28.6, 27.4 s; spread 0.6 s, divided by √3 and by 20 swings.
        var timed = SwingTimes.OfRounds(20, [28.0, 28.6, 27.4]);

        Assert.Equal(1.4, timed.PeriodS.Value, 9);
        Assert.Equal(0.6 / Math.Sqrt(3) / 20, timed.PeriodS.Off, 9);
        Assert.Equal(60, timed.Swings);
    }

    [Fact]
    public void One_round_is_as_good_as_two_hands() =>
        Assert.Equal(new Uncertain(1.4, Math.Sqrt(2) * 0.1 / 20), SwingTimes.OfRounds(20, [28.0]).PeriodS);

    [Fact]
    public void Rounds_that_agree_by_luck_do_not_look_better_than_a_hand_is() =>
        Assert.Equal(Math.Sqrt(2) * 0.1 / Math.Sqrt(2) / 20, SwingTimes.OfRounds(20, [28.0, 28.0]).PeriodS.Off, 12);

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
