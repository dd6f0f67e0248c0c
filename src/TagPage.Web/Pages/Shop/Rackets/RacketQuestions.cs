using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>Sizes that are possible but look like a typo or the wrong unit.</summary>
public static class RacketQuestions
{
    /// <summary>Head sizes outside these, in cm², are asked about. Common practice, no source; small ones are children's and squash frames.</summary>
    private const decimal UsualMinSquareCm = 250, UsualMaxSquareCm = 900;

    public static IReadOnlyList<Question> Of(RacketInput input)
    {
        Question?[] questions = [Length(input), Head(input)];
        return [.. questions.OfType<Question>()];
    }

    private static Question? Length(RacketInput input)
    {
        if (input is not { Sport: { } sport, LengthCm: { } length })
            return null;
        var limits = SportFacts.Of(sport).Limits;
        return length * 10 <= limits.MaxLengthMm
            ? null
            : new Question(nameof(input.LengthCm),
                $"{Formats.Number(length)} cm is longer than the {Formats.Number(limits.MaxLengthMm / 10m)} cm of the {limits.Source}. Correct it, or tick below to keep it.");
    }

    private static Question? Head(RacketInput input)
    {
        if (input.HeadSize is not { } size)
            return null;
        var squareCm = input.HeadSizeUnit == "cm2" ? size : HeadSize.ToSquareCm(size);
        return squareCm is >= UsualMinSquareCm and <= UsualMaxSquareCm
            ? null
            : new Question(nameof(input.HeadSize),
                $"A head of {Formats.Number(size)} {Formats.AreaUnit(input.HeadSizeUnit)} is unusual. Look at the unit, or tick below to keep it.");
    }
}
