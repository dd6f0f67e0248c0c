namespace TagPage.Core.Tags;

/// <summary>The state of a tag: printed ahead, leading to a racket, or retired for good.</summary>
public enum TagState { Unassigned, Live, Retired }
