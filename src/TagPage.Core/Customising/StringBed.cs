using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Core.Customising;

/// <summary>What the strings add to a frame: an estimate, to compare a strung frame with an unstrung one.</summary>
public static class StringBed
{
    // 15 to 18 g are usual; where a bed's centre lies is known to a centimetre. Common practice, no source.
    private const double OffG = 1.5, OffCm = 1;

    /// <summary>Grams of a bed, half of its length each of mains and crosses.</summary>
    /// <param name="bed">Strings of unknown diameter count as the sport's usual one.</param>
    /// <param name="sport">Decides how long the string is.</param>
    public static double Grams(Bed bed, Sport sport)
    {
        var usual = (double)SportFacts.Of(sport).ReferenceGaugeMm;
        return Grams(LengthM(sport) / 2, (double?)bed.Mains.GaugeMm ?? usual, Density(bed.Mains.Material))
            + Grams(LengthM(sport) / 2, (double?)bed.Crosses.GaugeMm ?? usual, Density(bed.Crosses.Material));
    }

    /// <summary>Grams of a round string.</summary>
    /// <param name="lengthM">Metres.</param>
    /// <param name="diameterMm">Millimetres.</param>
    /// <param name="density">g/cm³.</param>
    public static double Grams(double lengthM, double diameterMm, double density) =>
        lengthM * Math.PI * diameterMm * diameterMm / 4 * density;

    /// <summary>The bed as one mass at the head's centre.</summary>
    public static AddedMass AtHead(double grams, Sport sport, double lengthCm) => new(grams, StartingPlaces.HeadCentreCm(sport, lengthCm));

    /// <summary>The same mass with what the estimate leaves open.</summary>
    public static (Uncertain Grams, Uncertain AtCm) Estimate(double grams, Sport sport, double lengthCm) =>
        (new(grams, OffG), new(StartingPlaces.HeadCentreCm(sport, lengthCm), OffCm));

    /// <summary>Metres that stay in a frame. Common practice, no source.</summary>
    public static double LengthM(Sport sport) => sport == Sport.Tennis ? 11 : 9.5;

    /// <summary>g/cm³, from memory.</summary>
    public static double Density(Material material) => material switch
    {
        Material.NaturalGut => 1.28,
        Material.Polyester => 1.38,
        Material.Aramid => 1.44,
        _ => 1.14,
    };
}
