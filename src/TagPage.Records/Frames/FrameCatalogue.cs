using TagPage.Core.Sports;

namespace TagPage.Records.Frames;

/// <summary>The shop's frames by name, for lists of rackets.</summary>
public sealed class FrameCatalogue(IEnumerable<FrameStore.Row> frames)
{
    private readonly Dictionary<(Sport Sport, string Name), FrameStore.Row> _byName = frames.ToDictionary(frame => (frame.Sport, KeyOf(frame.Name)));

    /// <summary>What is known about a racket's frame; null where the catalogue has none of its name.</summary>
    public FrameStore.Row? Find(Sport sport, string frame) => _byName.GetValueOrDefault((sport, KeyOf(frame)));

    /// <summary>Two names with the same key are one frame.</summary>
    public static string KeyOf(string name) => name.Trim().ToUpperInvariant();
}
