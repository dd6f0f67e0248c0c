namespace TagPage.Core.Units;

/// <summary>Unit a tension was entered in: pound-force or kilogram-force.</summary>
public enum TensionUnit { Lb, Kg }
