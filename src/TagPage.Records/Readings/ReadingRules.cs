using TagPage.Core.Forecast.Learning;
using TagPage.Records.Storage;

namespace TagPage.Records.Readings;

/// <summary>What a reading can be, and when it looks like a typo or a fault of the instrument.</summary>
public static class ReadingRules
{
    /// <summary>The lowest and the highest pitch of a strung bed that a household's phone is believed, in Hz.</summary>
    public const int LowestHz = 300, HighestHz = 1400;

    /// <summary>Per cent. Strings do not gain tension; a little more is the instrument. Common practice, no source.</summary>
    private const double MostGain = 3, MostLoss = 60;

    /// <summary>A number and the instrument it was read on; one without the other says nothing.</summary>
    /// <param name="value">Null where nothing was read.</param>
    /// <param name="instrumentId">What it was read on.</param>
    /// <param name="place">The entry's property for the number.</param>
    /// <param name="instrumentPlace">The one for the instrument.</param>
    public static IEnumerable<Refusal> Faults(decimal? value, long? instrumentId, string place = "Reading", string instrumentPlace = "InstrumentId")
    {
        if (value is not null && instrumentId is null)
            yield return new InstrumentMissing(instrumentPlace);
        if (value is <= 0 or >= 5000)
            yield return new ReadingUnlikely(place);
    }

    /// <summary>The same for a household, who have their phone and nothing else.</summary>
    public static IEnumerable<Refusal> PitchFaults(decimal hertz)
    {
        if (hertz is < LowestHz or > HighestHz)
            yield return new PitchUnlikely();
    }

    /// <summary>A first reading after which later ones of the same strings would have gained tension.</summary>
    /// <param name="value">The first one as entered.</param>
    /// <param name="instrument">On what.</param>
    /// <param name="later">What was read on the strings since.</param>
    /// <param name="place">The entry's property for the number.</param>
    public static LaterReadsMore? FirstTooLow(decimal? value, long? instrument, IEnumerable<ReadingRow> later, string place) =>
        value is > 0 && later.FirstOrDefault(reading => !reading.First && reading.InstrumentId == instrument
            && MeasuredLoss.Percent(reading.Scale, (double)value.Value, (double)reading.Value) < -MostGain) is { } more ? new LaterReadsMore(place, more.Value) : null;

    /// <param name="bed">The strings that were measured.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="day">When.</param>
    /// <param name="value">The number read.</param>
    /// <param name="instrument">On what.</param>
    /// <param name="places">The entry's properties for day, number and instrument.</param>
    public static IReadOnlyList<Oddity> Oddities(
        MeasuredBed bed, DateOnly today, DateOnly? day, decimal? value, long? instrument, (string Day, string Value, string Instrument) places)
    {
        Oddity?[] oddities =
        [
            day < bed.StrungOn ? new ReadBeforeStrung(places.Day, day.Value, bed.StrungOn) : null,
            day > today ? new ReadInFuture(places.Day, day.Value) : null,
            day > bed.EndedOn ? new ReadAfterEnd(places.Day, bed.EndedOn.Value) : null,
            OtherInstrument(bed, instrument, places.Instrument),
            Change(bed, value, instrument, places.Value),
        ];
        return [.. oddities.OfType<Oddity>()];
    }

    private static ReadOnOther? OtherInstrument(MeasuredBed bed, long? instrument, string place) =>
        bed is { InstrumentId: not null, Instrument: { } first } && instrument is not null && instrument != bed.InstrumentId ? new ReadOnOther(place, first) : null;

    private static Oddity? Change(MeasuredBed bed, decimal? value, long? instrument, string place)
    {
        if (value is not > 0 || bed is not { First: { } first, Scale: { } scale } || instrument != bed.InstrumentId)
            return null;
        var loss = MeasuredLoss.Percent(scale, (double)first, (double)value.Value);
        return loss switch
        {
            < -MostGain => new TensionGained(place, -loss, first),
            > MostLoss => new TensionGone(place, loss, first),
            _ => null,
        };
    }
}
