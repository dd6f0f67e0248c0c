using TagPage.Core.Rackets;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;

namespace TagPage.Web.Words;

/// <summary>What the catalogue says about a frame, where hands are at work.</summary>
public static class FrameWords
{
    private const string Caution = "Above what the maker recommends, the frame can crack and the warranty can be void: ask the maker.";

    /// <summary>"50 to 60 lb"; empty where nothing is recommended.</summary>
    public static string Of(TensionRange range) => range switch
    {
        { Least: { } least, Most: { } most } => $"{Formats.Number(least)} to {Formats.Number(most)} {EnglishNames.Of(range.Unit)}",
        { Least: { } least } => $"{Formats.Number(least)} {EnglishNames.Of(range.Unit)} or more",
        { Most: { } most } => $"{Formats.Number(most)} {EnglishNames.Of(range.Unit)} or less",
        _ => "",
    };

    /// <summary>"16 × 19"; empty where it is not known.</summary>
    public static string Pattern(FrameEntry frame) =>
        (frame.PatternMains, frame.PatternCrosses) is (null, null) ? "" : $"{Known(frame.PatternMains)} × {Known(frame.PatternCrosses)}";

    private static string Known(int? count) => count is { } known ? Formats.Number(known) : "?";

    /// <summary>What a person at the machine looks for, in that order.</summary>
    public static IEnumerable<(string What, string Says)> Facts(FrameEntry frame) => new (string What, string Says)[]
    {
        ("Range", Of(frame.Range)), ("Pattern", Pattern(frame)), ("Skip", frame.SkippedHoles ?? ""), ("Tie off", frame.TieOffs ?? ""), ("Frame", frame.Note ?? ""),
    }.Where(fact => fact.Says.Length > 0);

    public static string Of(TensionOutOfRange far) =>
        $"{far.Tension} is outside the {Of(far.Range)} that your catalogue gives for {far.Frame}.{(far.Range.IsExceededBy(far.Tension) ? $" {Caution}" : "")} Correct it, or tick below; the ticket keeps that you confirmed it.";

    /// <summary>On a ticket: what is outside, and the caution where it is above.</summary>
    public static string Outside(TensionRange range, JobRow job)
    {
        var tensions = job.Mains == job.Crosses ? $"{job.Mains}" : $"{job.Mains} / {job.Crosses}";
        return $"{tensions} is outside the {Of(range)} recommended for this frame.{(range.IsExceededBy(job.Mains) || range.IsExceededBy(job.Crosses) ? $" {Caution}" : "")}";
    }
}
