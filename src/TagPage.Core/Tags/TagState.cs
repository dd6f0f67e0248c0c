namespace TagPage.Core.Tags;

/// <summary>Where a tag stands: printed ahead, leading to a racket, or done with for good.</summary>
public enum TagState { Unassigned, Live, Retired }
