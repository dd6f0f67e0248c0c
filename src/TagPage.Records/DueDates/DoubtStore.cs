using System.Globalization;
using Dapper;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Strings;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.DueDates;

/// <summary>Asks before a reading is saved: whether it lies far from what is expected of the strings that were measured.</summary>
public sealed class DoubtStore(Database database, UsualStore usual, ShopStore shops)
{
    /// <summary>All that is odd about a reading; the number itself for one reason at most.</summary>
    /// <param name="bed">The strings that were measured.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="input">As far as it was typed.</param>
    /// <param name="places">The entry's properties for day, number and instrument.</param>
    public IReadOnlyList<Oddity> Oddities(
        MeasuredBed bed, DateOnly today, (DateOnly? Day, string? Time, decimal? Value, long? Instrument) input, (string Day, string Value, string Instrument) places)
    {
        var odd = ReadingRules.Oddities(bed, today, input.Day, input.Value, input.Instrument, places);
        if (odd.Any(oddity => oddity.Field == places.Value))
            return odd;
        Oddity? number = Of(bed.JobId, input.Day, input.Time, input.Instrument, input.Value, places.Value);
        number ??= usual.Of(bed.RacketId, input.Instrument, input.Value, places.Value);
        return number is null ? odd : [.. odd, number];
    }

    private sealed record First : ForecastRow
    {
        public Material Material { get; init; }
        public DateOnly BedStrungOn { get; init; }
        public DateOnly TakenOn { get; init; }
        public string? TakenAt { get; init; }
        public long InstrumentId { get; init; }
        public ReadingScale Scale { get; init; }
        public double Value { get; init; }
    }

    /// <summary>Null where nothing speaks against it, or nothing can be told.</summary>
    public ReadingDoubtful? Of(long job, DateOnly? day, string? time, long? instrument, decimal? value, string place)
    {
        if (database.Read(c => Histories.Into(c, c.QuerySingleOrDefault<First>(FirstSql, new { job }))) is not { } bed || day is null || value is not > 0)
            return null;
        var values = shops.Get().StartingValues;
        var first = Reading(bed.TakenOn, bed.TakenAt, bed.InstrumentId, bed.Value) with { IsFirst = true };
        if (Reading(day.Value, time, instrument ?? 0, (double)value.Value).LossSince(first) is not { } loss)
            return null;
        var expected = Expectation.Of(bed.History.Jobs, new JobHistory { Id = job, Mains = bed.Material }, loss, values);
        return expected.IsDoubtful(loss.Percent) ? new ReadingDoubtful(place, (decimal)bed.Value, value.Value) : null;

        BedReading Reading(DateOnly on, string? at, long instrumentId, double number) => new()
        {
            IsFirst = false,
            Day = on,
            Time = TimeOnly.TryParse(at, CultureInfo.InvariantCulture, out var clock) ? clock : null,
            InstrumentId = instrumentId,
            Scale = bed.Scale,
            Value = number,
            Hours = bed.HoursBy(bed.BedStrungOn, on, values),
        };
    }

    private const string FirstSql = $"""
        SELECT m.material, j.strung_on AS bed_strung_on, g.taken_on, g.taken_at, g.instrument_id, i.scale, g.value, {ForecastRow.Columns}
        FROM job j
        JOIN forecast f ON f.racket_id = j.racket_id
        JOIN string_kind m ON m.id = j.mains_id
        JOIN reading g ON g.job_id = j.id AND g.first = 1
        JOIN instrument i ON i.id = g.instrument_id
        WHERE j.id = @job AND j.strung_on IS NOT NULL
        """;
}

/// <summary>Outside the central 99 % of what was expected of these strings.</summary>
public sealed record ReadingDoubtful(string Place, decimal First, decimal Value) : Oddity(Place);
