using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Frames;
using TagPage.Records.Storage;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>A few of the invented frames as the shop has strung them before; the rackets name many more.</summary>
public sealed class DemoFrames(FrameStore frames)
{
    public void Set()
    {
        Add(new FrameEntry { Sport = Sport.Tennis, Name = "Pellmore Rill 100", PatternMains = 16, PatternCrosses = 19, SkippedHoles = "mains 8T, 8B", TieOffs = "5B, 11B", LeastTension = 48, MostTension = 58 });
        Add(new FrameEntry { Sport = Sport.Tennis, Name = "Dunmarrow Palisade 97", PatternMains = 18, PatternCrosses = 20, SkippedHoles = "mains 7T 9T, 7B 9B", TieOffs = "4T, 6B", LeastTension = 45, MostTension = 55, Note = "Tube the second hole from the throat: its edge is sharp." });
        Add(new FrameEntry { Sport = Sport.Badminton, Name = "Lindwicke Bramble 7", PatternMains = 22, PatternCrosses = 21, LeastTension = 9, MostTension = 12, TensionUnit = TensionUnit.Kg });
    }

    private void Add(FrameEntry frame) => Done(frames.Add(Who.Shop, frame with { FormKey = FormKey.New() }));
}
