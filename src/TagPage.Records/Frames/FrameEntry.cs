using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Units;

namespace TagPage.Records.Frames;

/// <summary>What the shop knows about stringing a frame, as entered.</summary>
public record FrameEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public Sport Sport { get; init; }

    /// <summary>Maker and model, as rackets name it.</summary>
    public string Name { get; init; } = "";
    public int? PatternMains { get; init; }
    public int? PatternCrosses { get; init; }

    /// <summary>In the shop's own shorthand: "mains 7T 9T, 7B 9B".</summary>
    public string? SkippedHoles { get; init; }
    public string? TieOffs { get; init; }

    /// <summary>What the maker recommends, as printed on the frame; null for an open end.</summary>
    public decimal? LeastTension { get; init; }
    public decimal? MostTension { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public string? Note { get; init; }

    public TensionRange Range => new(LeastTension, MostTension, TensionUnit);
}
