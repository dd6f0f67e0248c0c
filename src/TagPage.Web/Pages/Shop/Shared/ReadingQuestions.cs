using TagPage.Core.Forecast.Learning;
using TagPage.Records.Readings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Shared;

/// <summary>Readings that are possible but look like a slip, of the finger or of the instrument.</summary>
public static class ReadingQuestions
{
    /// <summary>Per cent. Strings do not gain tension; a little more is the instrument. Common practice, no source.</summary>
    private const double MostGain = 3, MostLoss = 60;

    /// <param name="bed">The strings that were measured.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="day">When.</param>
    /// <param name="value">The number read.</param>
    /// <param name="instrument">On what.</param>
    /// <param name="fields">The form's names for day, number and instrument.</param>
    public static IReadOnlyList<Question> Of(MeasuredBed bed, DateOnly today, DateOnly? day, decimal? value, long? instrument, (string Day, string Value, string Instrument) fields)
    {
        Question?[] questions =
        [
            day < bed.StrungOn ? new Question(fields.Day, $"{Formats.Day(day)} is before these strings went in, {Formats.Day(bed.StrungOn)}. Correct it, or tick below to keep it.") : null,
            day > today ? new Question(fields.Day, $"{Formats.Day(day)} has not come yet. Correct it, or tick below to keep it.") : null,
            day > bed.EndedOn ? new Question(fields.Day, $"These strings came out on {Formats.Day(bed.EndedOn)}. Correct the day, or tick below to keep it.") : null,
            OtherInstrument(bed, instrument, fields.Instrument),
            Change(bed, value, instrument, fields.Value),
        ];
        return [.. questions.OfType<Question>()];
    }

    private static Question? OtherInstrument(MeasuredBed bed, long? instrument, string field) =>
        bed.InstrumentId is not null && instrument is not null && instrument != bed.InstrumentId
            ? new Question(field, $"Right after stringing it was read on {bed.Instrument}. Two instruments cannot be compared, so nothing is learned from this reading. Choose the first one, or tick below to keep it.")
            : null;

    private static Question? Change(MeasuredBed bed, decimal? value, long? instrument, string field)
    {
        if (value is not > 0 || bed is not { First: { } first, Scale: { } scale } || instrument != bed.InstrumentId)
            return null;
        var loss = MeasuredLoss.Percent(scale, (double)first, (double)value.Value);
        var percent = Formats.Number((decimal)Math.Round(Math.Abs(loss), 1));
        return loss switch
        {
            < -MostGain => new Question(field, $"That is {percent} % more tension than right after stringing ({Formats.Number(first)}), and strings do not gain any. Read again without dampener, or tick below to keep it."),
            > MostLoss => new Question(field, $"That is {percent} % less tension than right after stringing ({Formats.Number(first)}). Read again without dampener, or tick below to keep it."),
            _ => null,
        };
    }
}
