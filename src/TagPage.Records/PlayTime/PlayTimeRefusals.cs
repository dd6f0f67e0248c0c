using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>Hours played lie between 0 and 24.</summary>
public sealed record HoursUnlikely() : Refusal(nameof(HoursEntry.Hours));
