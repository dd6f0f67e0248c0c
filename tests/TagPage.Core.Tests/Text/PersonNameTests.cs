using TagPage.Core.Text;

namespace TagPage.Core.Tests.Text;

/// <summary>A tie (no-break space) is written as ~.</summary>
public class PersonNameTests
{
    [Theory]
    [InlineData("de la Cruz, Ana", "Ana de~la~Cruz")]
    [InlineData(" García Márquez ,  Ana María ", "Ana María García~Márquez")]
    [InlineData("Ferran, Odalys", "Odalys Ferran")]
    [InlineData("Odalys Ferran", "Odalys Ferran")]
    [InlineData("Ana de~la~Cruz", "Ana de~la~Cruz")]
    [InlineData("Ferran, ", "Ferran, ")]
    [InlineData("a, b, c", "a, b, c")]
    public void Comma_says_which_words_are_the_familys(string typed, string kept) =>
        Assert.Equal(kept, PersonName.Kept(typed).Replace(PersonName.Tie, '~'));

    [Theory]
    [InlineData("Odalys Ferran", "Ferran Odalys")]
    [InlineData("Jan van der Berg", "van der Berg Jan")]
    [InlineData("Ana de~la~Cruz", "de la Cruz Ana")]
    [InlineData("Ana María García~Márquez", "García Márquez Ana María")]
    [InlineData("ana maria cruz", "cruz ana maria")]
    [InlineData("Mika", "Mika")]
    [InlineData("澪 鷺沢", "鷺沢 澪")]
    [InlineData("", "")]
    public void Family_name_comes_first_to_sort_by(string name, string sorted) =>
        Assert.Equal(sorted, PersonName.FamilyFirst(name.Replace('~', PersonName.Tie)));
}
