namespace TagPage.Core.Strings;

/// <summary>Lengths of string in a shop’s own unit.</summary>
/// <param name="Unit">Sets or metres.</param>
/// <param name="RacketCm">What one racket takes, and so a set has, in centimetres; above zero.</param>
public readonly record struct StockLength(StockUnit Unit, int RacketCm)
{
    /// <summary>Centimetres of so many sets or metres, rounded to whole ones, halves away from zero.</summary>
    public int Centimetres(decimal amount) =>
        (int)Math.Round(amount * (Unit == StockUnit.Set ? RacketCm : 100), MidpointRounding.AwayFromZero);

    /// <summary>So many sets or metres, to a hundredth.</summary>
    public decimal Amount(long centimetres) => Math.Round((decimal)centimetres / (Unit == StockUnit.Set ? RacketCm : 100), 2, MidpointRounding.AwayFromZero);
}
