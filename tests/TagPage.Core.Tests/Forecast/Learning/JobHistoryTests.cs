using TagPage.Core.Forecast.Learning;
using TagPage.Core.Jobs;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast.Learning;

public class JobHistoryTests
{
    private static readonly BedReading First = new()
    {
        IsFirst = true,
        Day = Case.Strung,
        InstrumentId = 1,
        Scale = ReadingScale.Hertz,
        Value = 600,
        Hours = 0,
    };

    // Tension goes with the square of pitch: recomputed with NumPy from the stated formula.
    [Theory]
    [InlineData(600, 570, 9.75)]
    [InlineData(620, 600, 6.347555)]
    [InlineData(587.33, 554.37, 10.908746)]
    [InlineData(500, 450, 19)]
    [InlineData(500, 510, -4.04)]
    public void Tension_goes_with_the_square_of_pitch(double first, double later, double loss) =>
        Assert.Equal(loss, MeasuredLoss.Percent(ReadingScale.Hertz, first, later), 1e-6);

    [Fact]
    public void A_stiffness_like_number_goes_with_tension_and_nothing_else_is_taken()
    {
        Assert.Equal(20, MeasuredLoss.Percent(ReadingScale.Stiffness, 65, 52), 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredLoss.Percent(ReadingScale.Hertz, 0, 500));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredLoss.Percent((ReadingScale)9, 1, 1));
    }

    [Fact]
    public void A_reading_is_compared_with_the_first_of_the_same_job_by_days_and_hours_since()
    {
        var later = First with { IsFirst = false, Day = Case.Strung.AddDays(14), Value = 570, Hours = 7 };
        Assert.Equal(new LossReading(14, 7, MeasuredLoss.Percent(ReadingScale.Hertz, 600, 570)), later.LossSince(First));
        var timed = later with { Time = new TimeOnly(21, 0) };
        Assert.Equal(14.5, timed.LossSince(First with { Time = new TimeOnly(9, 0) })!.Value.Days, 12);
        Assert.Equal(14, timed.LossSince(First)!.Value.Days);
    }

    [Fact]
    public void Another_instrument_or_a_day_before_the_first_cannot_be_compared()
    {
        var later = First with { IsFirst = false, Day = Case.Strung.AddDays(14) };
        Assert.Null((later with { InstrumentId = 2 }).LossSince(First));
        Assert.Null((later with { Day = Case.Strung.AddDays(-1) }).LossSince(First));
        Assert.Null((later with { Hours = null }).LossSince(First));
    }

    [Fact]
    public void Only_the_same_material_teaches_and_how_a_bed_ended_says_what()
    {
        var jobs = new[]
        {
            Job(BedEnd.Wear, 14), Job(BedEnd.CutOut, 10), Job(BedEnd.Mishit, 3), Job(BedEnd.Grommet, 4), Job(BedEnd.Machine, 1),
            Job(BedEnd.Unknown, 9), Job(null, 8), Job(BedEnd.Wear, null), Job(BedEnd.Wear, 0),
            Job(BedEnd.Wear, 30) with { Mains = Material.NaturalGut },
        };
        var learned = Learned.From(jobs, Material.Polyester);
        Assert.Equal([14], learned.BrokeAfter);
        Assert.Equal([10, 3, 4, 1], learned.CameOutAfter);
        Assert.Equal([30], Learned.From(jobs, Material.NaturalGut).BrokeAfter);
    }

    [Fact]
    public void A_job_without_a_first_reading_teaches_nothing_about_tension()
    {
        var later = First with { IsFirst = false, Day = Case.Strung.AddDays(14), Value = 570 };
        Assert.Empty(Learned.From([Job(null, null) with { Readings = [later] }], Material.Polyester).Beds);
        Assert.Single(Assert.Single(Learned.From([Job(null, null) with { Readings = [later, First] }], Material.Polyester).Beds));
    }

    [Fact]
    public void A_doubtful_reading_teaches_nothing_until_it_counts()
    {
        var later = First with { IsFirst = false, Day = Case.Strung.AddDays(14), Value = 570 };
        var slip = later with { Value = 57, IsDoubtful = true };
        var job = Job(null, null) with { Readings = [First, later, slip] };
        Assert.Equal(9.75, Assert.Single(Assert.Single(Learned.From([job], Material.Polyester).Beds)).Percent, 9);
        Assert.Empty(Learned.From([job with { Readings = [First, slip] }], Material.Polyester).Beds);
    }

    private static JobHistory Job(BedEnd? ended, double? hours) => new() { Mains = Material.Polyester, Ended = ended, Hours = hours };
}
