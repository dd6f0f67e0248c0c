namespace TagPage.Core.Rackets;

/// <summary>Where a racket stands. In turn and spare are in play; the others have no restring-by date.</summary>
public enum RacketState { InTurn, Spare, Resting, Damaged, Sold, Gone }
