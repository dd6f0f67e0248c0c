using TagPage.Records.Jobs;
using TagPage.Records.Readings;
using TagPage.Records.Storage;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What is odd about the reading right after stringing, on the forms that take one.</summary>
internal static class FirstReading
{
    /// <summary>One that was there already is not asked about again.</summary>
    public static IEnumerable<Oddity> Oddities(UsualStore usual, JobRow saved, decimal? value, long? instrument) =>
        (value, instrument) != (saved.Reading, saved.InstrumentId) && usual.Of(saved.RacketId, instrument, value, "Reading", firstOf: saved.Id) is { } far ? [far] : [];
}
