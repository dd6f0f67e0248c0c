namespace TagPage.Core.Rackets;

/// <summary>What a part of a racket looks like.</summary>
public enum PartState { Fine, Worn, Damaged }
