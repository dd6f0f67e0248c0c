using TagPage.Core.Customising;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>Weights and balances as clients and strangers read them.</summary>
public class MeasureWordsTests
{
    private static readonly CustomisingValues Ounces = new() { WeightUnit = WeightUnit.Oz, BalanceUnit = BalanceUnit.Points, LengthUnit = LengthUnit.In };

    [Theory]
    [InlineData("en", "7.1 ± 0.4 points head light", "2.2 ± 0.4 points head heavy", "12.6 in from the butt end")]
    [InlineData("de", "7,1 ± 0,4 Punkte grifflastig", "2,2 ± 0,4 Punkte kopflastig", "12,6 in vom Griffende")]
    [InlineData("es", "7,1 ± 0,4 puntos hacia el mango", "2,2 ± 0,4 puntos hacia la cabeza", "a 12,6 in del extremo del mango")]
    [InlineData("fr", "7,1 ± 0,4 points en manche", "2,2 ± 0,4 points en tête", "à 12,6 in du bout du manche")]
    [InlineData("it", "7,1 ± 0,4 punti verso il manico", "2,2 ± 0,4 punti verso la testa", "a 12,6 in dal fondo del manico")]
    [InlineData("ja", "ヘッドライト 7.1 ± 0.4 ポイント", "ヘッドヘビー 2.2 ± 0.4 ポイント", "グリップエンドから 12.6 in")]
    [InlineData("pt", "7,1 ± 0,4 pontos para o cabo", "2,2 ± 0,4 pontos para a cabeça", "a 12,6 in da ponta do cabo")]
    [InlineData("zh", "头轻 7.1 ± 0.4 点", "头重 2.2 ± 0.4 点", "距拍柄末端 12.6 in")]
    public void Points_and_inches_are_said_in_every_language(string code, string light, string heavy, string fromButt)
    {
        var words = new MeasureWords(new SpecWords(Ounces, Sport.Tennis), Languages.All.Single(language => language.Code == code));

        Assert.Equal(light, words.BalanceFromButt(new(32, 0.1), new(7.1, 0.35)));
        Assert.Equal(heavy, words.Balance(new(35, 0.1), new(-2.2, 0.35)));
        Assert.Equal(fromButt, words.BalanceFromButt(new(32, 0), null));
    }

    [Fact]
    public void Points_are_for_tennis_and_grams_stay_grams()
    {
        var words = new MeasureWords(new SpecWords(new CustomisingValues { BalanceUnit = BalanceUnit.Points }, Sport.Squash), Languages.All.Single(language => language.Code == "en"));

        Assert.Equal("330 ± 1 mm", words.Balance(new(33, 0.1), new(4, 0.3)));
        Assert.Equal(("142.5 ± 0.1 g", "142.5 g", "2.25 g", "53 cm"), (words.Weight(new(142.5, 0.1)), words.Weight(new(142.5, 0)), words.Piece(2.25m), words.At(53)));
    }
}
