namespace TagPage.Core.Rackets;

/// <summary>How a racket is used. InTurn (played regularly) and Spare are in play; the others have no restring-by date.</summary>
public enum RacketState { InTurn, Spare, Resting, Damaged, Sold, Gone }
