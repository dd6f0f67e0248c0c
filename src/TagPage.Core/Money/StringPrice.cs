using TagPage.Core.Sports;

namespace TagPage.Core.Money;

/// <summary>What a string costs the client: a set, a metre, or both. A set wins; half a set is half its price, halves of a unit up.</summary>
/// <param name="SetMinor">A whole racket's; null where it is sold by the metre alone.</param>
/// <param name="MetreMinor">Null where it is sold by the set alone.</param>
public sealed record StringPrice(long? SetMinor, long? MetreMinor)
{
    /// <summary>What a piece of that length costs at a price by the metre.</summary>
    public static long ByMetre(long metreMinor, int centimetres) => Rounding.HalfAway((Int128)metreMinor * centimetres, 100);

    public static long HalfOf(long setMinor) => Rounding.HalfAway(setMinor, 2);

    /// <summary>
    /// Centimetres a racket usually takes, mains and crosses together, for a start that the owner changes: common practice,
    /// 12 m in tennis and 10 m in badminton and squash.
    /// </summary>
    public static int UsualCentimetres(Sport sport) => sport == Sport.Tennis ? 1200 : 1000;
}
