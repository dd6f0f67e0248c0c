namespace TagPage.Core.Jobs;

/// <summary>How a string bed came to its end.</summary>
public enum BedEnd { Wear, Mishit, Grommet, Machine, CutOut, Unknown }
