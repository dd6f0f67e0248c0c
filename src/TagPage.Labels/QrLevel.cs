namespace TagPage.Labels;

/// <summary>How much of a symbol may be damaged and still be read: about 15, 25 and 30 % (ISO/IEC 18004).</summary>
public enum QrLevel { M, Q, H }
