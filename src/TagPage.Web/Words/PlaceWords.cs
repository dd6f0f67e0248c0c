using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Web.Words;

/// <summary>Where on a frame something can be, for whoever typed something else.</summary>
public static class PlaceWords
{
    public static string FromButt { get; } = $"A place is between 0 and {Both(FramePlace.FarthestCm)} from the butt.";

    public static string FromMiddle { get; } = $"It is between 0 and {Both(FramePlace.FarthestOffAxisCm)} from the middle.";

    private static string Both(int cm) => $"{cm} cm ({Formats.Number(new Distance(cm, LengthUnit.Cm).In(LengthUnit.In), 1)} in)";
}
