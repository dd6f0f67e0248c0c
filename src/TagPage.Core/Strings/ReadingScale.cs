namespace TagPage.Core.Strings;

/// <summary>What an instrument measures on the strung bed: a stiffness-like number, or pitch in hertz.</summary>
public enum ReadingScale { Stiffness, Hertz }
