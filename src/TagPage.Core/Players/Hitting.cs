namespace TagPage.Core.Players;

/// <summary>How hard a player is on strings.</summary>
public enum Hitting { Easy, Average, Hard }
