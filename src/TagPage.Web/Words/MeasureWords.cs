using TagPage.Core.Customising;
using TagPage.Core.Text;

namespace TagPage.Web.Words;

/// <summary>What a racket measures as strangers and clients read it: in the shop’s units, in their language. A figure whose ± is zero stands without one.</summary>
/// <param name="Units">The shop's.</param>
/// <param name="Language">The reader's.</param>
public sealed record MeasureWords(SpecWords Units, Language Language)
{
    public string Weight(Uncertain grams) => With(grams, Units.MassUnit.PerG, Units.MassUnit.Decimals, $" {Units.MassUnit.Name}");

    /// <summary>In points where the shop thinks in them and the length is known; else a distance.</summary>
    public string Balance(Uncertain cm, Uncertain? points) => Units.BalanceUnit == BalanceUnit.Points && points is { } p
        ? (p.Value < 0 ? Language.Phrases.Tag.HeadHeavy : Language.Phrases.Tag.HeadLight).Fill(("points", With(p with { Value = Math.Abs(p.Value) }, 1, 1, "")))
        : With(cm, Units.FromButtUnit.PerCm, Units.FromButtUnit.Decimals, $" {Units.FromButtUnit.Name}");

    /// <summary>The same as a whole sentence’s end: a distance says from where.</summary>
    public string BalanceFromButt(Uncertain cm, Uncertain? points) => Units.BalanceUnit == BalanceUnit.Points && points is not null
        ? Balance(cm, points)
        : Language.Phrases.Tag.FromButt.Fill(("distance", Balance(cm, points)));

    public string Swing(Uncertain swing) => With(swing, 1, 1, " kg·cm²");

    public string Piece(decimal grams) => $"{Language.Number((double)grams * Units.MassUnit.PerG, Units.PieceDecimals)} {Units.MassUnit.Name}";

    public string At(decimal cm) => $"{Language.Number((double)cm * Units.PlaceUnit.PerCm, Units.PlaceUnit.Decimals)} {Units.PlaceUnit.Name}";

    private string With(Uncertain figure, double factor, int decimals, string unit) =>
        Language.Number(figure.Value * factor, decimals) + (figure.Off > 0 ? $" ± {Language.Number(figure.Off * factor, decimals)}" : "") + unit;
}
