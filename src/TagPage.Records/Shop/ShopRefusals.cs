using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>The last closed day is before the first.</summary>
public sealed record ClosedBackwards() : Refusal(nameof(ClosedDaysEntry.ToOn));

/// <summary>Closed days that are over, years ahead, or longer than a year.</summary>
public sealed record ClosedFarAway() : Refusal(nameof(ClosedDaysEntry.FromOn));

/// <summary>Another care guide has this address.</summary>
public sealed record GuideNameTaken() : Refusal(nameof(CareGuideEntry.Name));
