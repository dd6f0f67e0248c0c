using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>Another care guide has this address.</summary>
public sealed record GuideNameTaken() : Refusal(nameof(CareGuideEntry.Name));
