using TagPage.Core.Customising;

namespace TagPage.Records.Customising;

/// <summary>What was done to one racket at the bench.</summary>
public sealed record CustomEntry
{
    public DateOnly On { get; init; }

    /// <summary>The spec that was planned from, and its version: another one in the meantime asks for another plan.</summary>
    public long SpecId { get; init; }
    public int SpecVersion { get; init; }

    /// <summary>Only what is left open of it, and how that goes together, is kept; the figures follow from the pieces. Null leaves open what the instruments do.</summary>
    public MeasuredBody? After { get; init; }
    public AddedMaterial Material { get; init; }
    public IReadOnlyList<(FramePlace Place, double Grams)> Added { get; init; } = [];

    /// <summary>Grams of earlier pieces, by their number.</summary>
    public IReadOnlyList<(long Id, double Grams)> Removed { get; init; } = [];
}
