using TagPage.Records.Jobs;
using TagPage.Records.Readings;
using TagPage.Records.Storage;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What is odd about the reading right after stringing, on the forms that take one.</summary>
internal static class FirstReading
{
    private const string Place = "Reading";

    /// <summary>One that was there already is not asked about again.</summary>
    /// <param name="usual">What else was read.</param>
    /// <param name="saved">The job.</param>
    /// <param name="value">The number as typed.</param>
    /// <param name="instrument">On what.</param>
    /// <param name="readings">All of the job's.</param>
    public static IEnumerable<Oddity> Oddities(UsualStore usual, JobRow saved, decimal? value, long? instrument, IEnumerable<ReadingRow> readings)
    {
        if ((value, instrument) == (saved.Reading, saved.InstrumentId))
            return [];
        Oddity? odd = usual.Of(saved.RacketId, instrument, value, Place, firstOf: saved.Id);
        odd ??= ReadingRules.FirstTooLow(value, instrument, readings, Place);
        return odd is null ? [] : [odd];
    }
}
