using TagPage.Records.Players;

namespace TagPage.Records.Tests.Players;

/// <summary>What a household calls its players.</summary>
public sealed class GivenNamesTests
{
    [Theory]
    [InlineData("Pim Ferran", "Pim")]
    [InlineData("欧阳 子轩", "欧阳 子轩")]
    [InlineData("さくら 山田", "さくら 山田")]
    [InlineData("澪", "澪")]
    public void First_word_stands_for_a_name_unless_the_family_comes_first(string name, string called) =>
        Assert.Equal(called, GivenNames.Of([name])[name]);

    [Fact]
    public void Two_of_the_same_given_name_are_called_in_full() =>
        Assert.Equal(["Ana Brno", "Ana Ferran"], GivenNames.Of(["Ana Brno", "Ana Ferran"]).Values.Order(StringComparer.Ordinal));
}
