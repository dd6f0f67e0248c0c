using TagPage.Records.DueDates;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>Pim's strings read 64 right after stringing on 1 November; three weeks and nine hours later somebody types 26.9 for 53.</summary>
public sealed class DoubtfulReadingTests : IDisposable
{
    private readonly Street _street = new();
    private readonly ReadingStore _store;
    private readonly DoubtStore _doubts;

    public DoubtfulReadingTests()
    {
        new DueDateKeeper(_street.Database, _street.Time).Attach();
        _store = new ReadingStore(_street.Database, _street.Clock);
        _doubts = new DoubtStore(_street.Database, new UsualStore(_street.Database), new ShopStore(_street.Database));
        _street.Records.Change("UPDATE player SET rule = 'WhicheverFirst', times_a_week = 3, hours_a_time = 1.5");
        _street.Records.Reading(_street.Strung, 64);
    }

    public void Dispose() => _street.Dispose();

    private string Due => _street.Records.Text("SELECT due_on FROM racket");

    [Fact]
    public void Slip_is_asked_about_and_an_ordinary_reading_is_not()
    {
        Assert.Equal(new ReadingDoubtful("Value", 64, 26.9m), Ask(26.9m));
        Assert.Null(Ask(53));
        Assert.Null(_doubts.Of(_street.Strung, new(2026, 11, 22), null, 99, 26.9m, "Value"));
        Assert.Null(_doubts.Of(_street.Strung, new(2026, 10, 1), null, 1, 26.9m, "Value"));
    }

    [Fact]
    public void Slip_that_was_kept_moves_no_date_until_the_owner_says_that_it_counts()
    {
        var before = Due;
        var slip = Add(26.9m);
        Assert.Equal((before, "1"), (Due, Doubtful(slip)));

        _street.Check(true, () => _store.Count(Who.Shop, slip));

        Assert.Equal("0", Doubtful(slip));
        Assert.True(string.CompareOrdinal(Due, before) < 0, $"{Due} is not before {before}");
    }

    [Fact]
    public void Ordinary_reading_counts_at_once()
    {
        var before = Due;
        var reading = Add(46);
        Assert.Equal("0", Doubtful(reading));
        Assert.NotEqual(before, Due);
    }

    [Theory]
    [InlineData(Actor.Owner)]
    [InlineData(Actor.OtherClient)]
    [InlineData(Actor.Finder)]
    [InlineData(Actor.Program)]
    public void Nobody_but_the_shop_says_that_it_counts(Actor actor)
    {
        var slip = Add(26.9m);
        _street.Check(false, () => _store.Count(_street.Be(actor), slip));
        Assert.Equal("1", Doubtful(slip));
    }

    [Fact]
    public void Slip_and_the_right_number_entered_together_are_told_apart()
    {
        _street.Records.Change("""
            INSERT INTO reading (job_id, first, taken_on, instrument_id, value)
            SELECT job_id, 0, day.value, instrument_id, number.value FROM reading, json_each('["2026-11-15","2026-11-22"]') day, json_each('[55,26.9]') number
            WHERE day.key = number.key
            """);
        Assert.Equal("55.0 0, 26.9 1", _street.Records.Text("SELECT group_concat(value || ' ' || doubtful, ', ') FROM reading WHERE first = 0"));
    }

    private ReadingDoubtful? Ask(decimal value) => _doubts.Of(_street.Strung, new(2026, 11, 22), null, 1, value, "Value");

    private long Add(decimal value) => Assert.IsType<Outcome.Done>(_store.Add(Who.Shop, _street.Strung, new ReadingEntry
    {
        FormKey = FormKey.New(),
        TakenOn = new(2026, 11, 22),
        InstrumentId = 1,
        Value = value,
    })).Id;

    private string Doubtful(long reading) => _street.Records.Text($"SELECT doubtful FROM reading WHERE id = {reading}");
}
