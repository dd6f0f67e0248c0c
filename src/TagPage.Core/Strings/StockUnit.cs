namespace TagPage.Core.Strings;

/// <summary>How a shop buys and counts a string: in sets, one a racket, or by the metre from a reel.</summary>
public enum StockUnit
{
    Set,
    Metre,
}
