using TagPage.Records.Storage;

namespace TagPage.Records.Frames;

/// <summary>The catalogue has a frame of this name for this sport.</summary>
public sealed record FrameNameTaken() : Refusal(nameof(FrameEntry.Name));
