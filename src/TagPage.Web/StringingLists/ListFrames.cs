using TagPage.Records.Import;
using TagPage.Records.StringingLists;

namespace TagPage.Web.StringingLists;

/// <summary>Which rackets on file a line may be about, by frame, marking and sport.</summary>
internal static class ListFrames
{
    /// <summary>A sport that the line names counts. One that was said for the whole list gives way to that of a frame on file.</summary>
    public static List<ListOnFileStore.Racket> Of(IEnumerable<ListOnFileStore.Racket> onFile, ReadLine line, bool isSportNamed)
    {
        var frames = onFile.Where(racket => NameKey.Of(racket.Frame) == NameKey.Of(line.Frame) && IsMarked(racket, line.Marking)).ToList();
        var inSport = frames.Where(racket => racket.Sport == line.Sport).ToList();
        return inSport.Count > 0 || isSportNamed ? inSport : frames;
    }

    private static bool IsMarked(ListOnFileStore.Racket racket, string marking) =>
        marking.Length == 0 || (ListRackets.NumberOf(marking) is { } number ? racket.Number == number : NameKey.Of(racket.TapeColour) == NameKey.Of(marking));
}
