using TagPage.Records.Jobs;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

public sealed class LastUsedStoreTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Rackets_own_instrument_is_proposed_before_the_one_used_last_on_another()
    {
        var second = _street.Records.Racket(_street.Pim, number: 2);
        var never = _street.Records.Racket(_street.Pim, number: 3);
        _street.Records.Change("INSERT INTO instrument (id, name, scale) VALUES (71, 'Gauge', 'Stiffness'), (72, 'Fork', 'Hertz')");
        Read(_street.Racket, 71);
        Read(second, 72);
        var used = new LastUsedStore(_street.Database);

        Assert.Equal((71, 72, 72), (used.LastStrung(_street.Racket).InstrumentId, used.LastStrung(second).InstrumentId, used.LastStrung(never).InstrumentId));
    }

    private void Read(long racket, long instrument)
    {
        var job = _street.Records.Job(racket, Street.Today.AddDays(-3));
        _street.Records.Change($"INSERT INTO reading (job_id, first, taken_on, instrument_id, value) VALUES ({job}, 1, '2026-11-22', {instrument}, 60)");
    }
}
