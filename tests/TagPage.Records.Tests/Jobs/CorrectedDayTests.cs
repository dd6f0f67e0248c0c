using TagPage.Core.Jobs;
using TagPage.Core.Units;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>Pim's racket was strung on 1 November, and again on the 20th; somebody corrects a day.</summary>
public sealed class CorrectedDayTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _second;

    public CorrectedDayTests()
    {
        _second = _street.Records.Job(_street.Racket, new(2026, 11, 20));
        _street.Records.Change($"UPDATE job SET ended_on = '2026-11-20', ended_how = 'CutOut' WHERE id = {_street.Strung}");
    }

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("2026-10-30")]
    [InlineData("2026-10-31")]
    public void Day_before_the_strings_it_replaced_is_refused(string day)
    {
        var why = _street.Refused<StrungOutOfOrder>(() => Correct(_second, day));
        Assert.Equal(new DateOnly(2026, 11, 1), why.On);
        Assert.Equal($"{_second}", _street.Records.Text("SELECT bed_id FROM forecast"));
    }

    [Fact]
    public void Day_after_the_strings_that_replaced_it_is_refused() =>
        Assert.Equal(new DateOnly(2026, 11, 20), _street.Refused<StrungOutOfOrder>(() => Correct(_street.Strung, "2026-11-22")).On);

    [Theory]
    [InlineData("2026-11-01")]
    [InlineData("2026-11-02")]
    [InlineData("2026-11-24")]
    public void Day_that_leaves_their_order_is_taken(string day)
    {
        _street.Check(true, () => Correct(_second, day));
        Assert.Equal("", _street.Records.Text("SELECT ended_on FROM forecast"));
    }

    private Outcome Correct(long job, string day)
    {
        var on = DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture);
        return new EditJobStore(_street.Database, new ShopStore(_street.Database), _street.Clock).Change(Who.Shop, job, new ChangedJobEntry
        {
            Version = 1,
            MainsId = 1,
            MainsTension = 52,
            CrossesTension = 50,
            TensionUnit = TensionUnit.Lb,
            ReceivedOn = new(2026, 10, 1),
            StrungOn = on,
            CollectedOn = on,
            EndedOn = job == _second ? null : new(2026, 11, 24),
            EndedHow = job == _second ? null : BedEnd.CutOut,
        });
    }
}
