using TagPage.Records.Readings;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>Why a reading or an instrument was not saved, as the shop reads it.</summary>
internal static class ReadingRefusalWords
{
    public static string? Of(Refusal why) => why switch
    {
        InstrumentInUse => "This instrument already has readings. Add another instrument for the other scale.",
        InstrumentNameTaken => "There is already an instrument with this name. Choose another name.",
        InstrumentUnknown => "Choose an instrument from the list.",
        InstrumentMissing => "Choose the instrument of the reading.",
        ReadingUnlikely => "Enter the number the instrument shows, above 0 and below 5000.",
        _ => null,
    };
}
