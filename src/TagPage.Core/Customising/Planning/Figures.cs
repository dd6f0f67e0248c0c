namespace TagPage.Core.Customising.Planning;

/// <summary>The three figures that are wanted of a racket.</summary>
[Flags]
public enum Figures { None = 0, Mass = 1, Balance = 2, SwingWeight = 4, All = Mass | Balance | SwingWeight }
