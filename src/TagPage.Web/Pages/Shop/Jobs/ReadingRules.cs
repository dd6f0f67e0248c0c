using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>A reading is a number and the instrument it was read on; one without the other says nothing.</summary>
internal static class ReadingRules
{
    public static IEnumerable<FieldFault> Of(decimal? reading, long? instrumentId, string field = "Reading", string instrumentField = "InstrumentId")
    {
        if (reading is not null && instrumentId is null)
            yield return new(instrumentField, "Choose the instrument of the reading.");
        if (reading is <= 0 or >= 5000)
            yield return new(field, "Write the number the instrument shows, above 0 and below 5000.");
    }
}
